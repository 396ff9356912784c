import type { Entry } from "../log/index.ts";
import { compareEntries } from "../log/index.ts";
import type { WalkId } from "../units/index.ts";
import type { Checkpoint, CheckpointAnswer } from "./checkpoint.ts";
import { checkpointIn, heldAgainst } from "./checkpoint.ts";
import { isCheckpoint, isHub } from "./hub-word.ts";
import type { Judging, SourceChain } from "./source-chain.ts";
import { chainsOf, evidence, keyFindings } from "./source-keys.ts";
import { sourcesVerified, worstOf } from "./sources-verified.ts";
import type { LinkedEntry } from "./tally.ts";
import { tallying } from "./tally.ts";
import type { CheckpointVerified, SealFinding, Verification } from "./verification.ts";
import { otherWalk, worstFirst } from "./verification.ts";
import { voiceCode } from "./voice-code.ts";
import { bySourceOf } from "./walk-of.ts";

/** How a log is verified. */
export interface Verifying extends Pick<Judging, "fits" | "linkOf"> {
  /** True to look at one seal a run of entries; false to look at every one. */
  readonly isQuick?: boolean;
  /** Told how many of the entries have been looked at. */
  readonly onProgress?: (done: number, of: number) => void;
}

/**
 * Verifies a log ([SEL7]): the seals and the chain of every source, who vouches for its key, and what checkpoints held. `trust` are the keys of hubs, as they write
 * them; without any, what hubs say still counts as evidence of changes, and nobody is trusted. `null` for a log without entries. A look at a seal takes about a
 * millisecond, so that a quick verification of a long log takes a small part of the time of a full one.
 */
export function verifyLog(
  entries: readonly Entry[],
  trust: readonly string[],
  { isQuick = false, onProgress, ...by }: Verifying = {},
): Verification | null {
  const log = bySourceOf(entries);
  if (!log) return null;
  const { walk, bySource, others } = log;
  const findings: SealFinding[] = others.map(otherWalk);
  let judged = 0;
  const onJudged = () => {
    judged += 1;
    onProgress?.(judged, entries.length);
  };
  const { chains, word, trusted } = chainsOf(bySource, new Set(trust), { isQuick, onJudged, ...by });
  findings.push(...[...chains.values()].flatMap((chain) => chain.findings));
  findings.push(...[...chains.values()].flatMap((chain) => keyFindings(chain, word, trusted)));
  const all = [...chains.values()].flatMap((chain) => chain.entries);
  const checked = checkpointsOf(walk, chains, { trusted, isEvidence: evidence(trust, trusted), isQuick });
  findings.push(...checked.findings);
  const isClosed = closedAt(all);
  const sources = sourcesVerified([...chains.keys(), ...checked.missing], {
    chains,
    word,
    findings,
    isBehind: (one) =>
      !checked.under.has(one) && !(trusted.has(one.entry.wire.source) && isCheckpoint(one.entry)),
    best: (behind) => (isClosed && behind === 0 ? "whole" : "intact"),
  });
  const tally = checked.tallyOf(new Set(all));
  return {
    walk,
    isQuick,
    verdict: worstOf(sources),
    sources,
    checkpoints: checked.checkpoints,
    findings: worstFirst(findings),
    mayBeKeptBack: !isClosed && isRehearsal(all) && findings.some(({ kind }) => kind === "missing"),
    root: tally.root,
    order: tally.order,
    code: voiceCode(walk, tally),
    entries: tally.entries,
  };
}

interface Hubs {
  readonly trusted: ReadonlySet<string>;
  readonly isEvidence: (source: string) => boolean;
  readonly isQuick: boolean;
}

/** What is told of a checkpoint that a quick look passes by. */
const PASSED_BY = { state: "not-looked-at" } as const;

/** All checkpoints, what they say against the log, and what is under one that is trusted and fits. */
function checkpointsOf(
  walk: WalkId,
  chains: ReadonlyMap<string, SourceChain>,
  { trusted, isEvidence, isQuick }: Hubs,
) {
  const findings: SealFinding[] = [];
  const checkpoints: CheckpointVerified[] = [];
  const under = new Set<LinkedEntry>();
  const missing = new Set<string>();
  const byNumber = new Map(
    [...chains].map(([source, { entries }]) => [source, new Map(entries.map((one) => [one.number, one]))]),
  );
  const made = [...chains.values()]
    .flatMap(({ source, entries }) => (isHub(source) ? entries : []))
    .filter(({ entry, isSealed }) => isSealed && isCheckpoint(entry))
    .toSorted((a, b) => compareEntries(a.entry, b.entry));
  const tallyOf = tallying([...chains.values()].flatMap((chain) => chain.entries));
  const entryAt = (of: string, at: number) => byNumber.get(of)?.get(at) ?? null;
  const hasForks = [...chains.values()].some(({ forks }) => forks.size > 0);
  const latest = new Map(made.map(({ entry }) => [entry.wire.source, entry]));
  const answers = new Map<Entry, CheckpointAnswer>();
  const answerTo = (entry: Entry, checkpoint: Checkpoint): CheckpointAnswer => {
    const answer = answers.get(entry) ?? heldAgainst(checkpoint, { entryAt, tallyOf });
    answers.set(entry, answer);
    return answer;
  };
  const fits = (entry: Entry | undefined): boolean => {
    const checkpoint = checkpointIn(entry?.wire.data);
    return entry !== undefined && checkpoint !== null && answerTo(entry, checkpoint).state === "fits";
  };
  for (const { entry, number } of made) {
    const { source, data } = entry.wire;
    const checkpoint = checkpointIn(data);
    const isTrusted = trusted.has(source);
    if (!checkpoint) {
      if (isEvidence(source)) findings.push({ kind: "unreadable-checkpoint", source, number });
      checkpoints.push({ code: "", by: source, trusted: isTrusted, entries: 0, state: "unreadable" });
      continue;
    }
    // What a hub held before is in what it held last: where that is here still, a quick look is done.
    const isPassedBy = isQuick && latest.get(source) !== entry && fits(latest.get(source));
    const answer = isPassedBy ? PASSED_BY : answerTo(entry, checkpoint);
    checkpoints.push({
      code: voiceCode(walk, checkpoint),
      by: source,
      trusted: isTrusted,
      entries: checkpoint.entries,
      state: answer.state,
    });
    if (!isEvidence(source) || answer.state === "not-looked-at") continue;
    if (answer.state === "fits") {
      if (isTrusted) for (const one of answer.under) under.add(one);
    } else if (answer.state === "cut") {
      for (const [of, at] of answer.missing) {
        missing.add(of);
        findings.push({ kind: "missing", source: of, number: at });
      }
      // Which of two histories the hub held cannot be told, and the fork is said already.
    } else if (!hasForks) findings.push({ kind: answer.state, source, number });
  }
  return { checkpoints, findings, under, missing, tallyOf };
}

/** Whether the walk is closed by the last that is said of it. */
function isRehearsal(all: readonly LinkedEntry[]): boolean {
  return all.some(({ entry: { wire } }) => {
    const { mode } = (wire.data ?? {}) as { readonly mode?: unknown };
    return wire.type === "tetherline.walk.opened" && mode === "rehearsal";
  });
}

function closedAt(all: readonly LinkedEntry[]): boolean {
  const said = all
    .map(({ entry }) => entry)
    .filter(({ wire }) => /^tetherline\.walk\.(closed|reopened)$/.test(wire.type))
    .toSorted(compareEntries);
  return said.at(-1)?.wire.type === "tetherline.walk.closed";
}
