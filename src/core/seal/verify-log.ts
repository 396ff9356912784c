import type { Entry, Role } from "../log/index.ts";
import { compareEntries, deviceOf, ROLES, roleRefusal } from "../log/index.ts";
import type { WalkId } from "../units/index.ts";
import { checkpointIn, heldAgainst } from "./checkpoint.ts";
import type { Admission, HubWord } from "./hub-word.ts";
import { isHub, trustedHubs, vouchedKeys, wordOf } from "./hub-word.ts";
import type { SourceChain } from "./source-chain.ts";
import { sourceChain } from "./source-chain.ts";
import type { LinkedEntry } from "./tally.ts";
import { tallyOf } from "./tally.ts";
import type {
  CheckpointVerified,
  SealFinding,
  SourceVerified,
  Verdict,
  Verification,
} from "./verification.ts";
import { VERDICT_OF, VERDICTS, worseOf } from "./verification.ts";
import { voiceCode } from "./voice-code.ts";

/**
 * Verifies a log ([SEL7]): the seals and the chain of every source, who vouches for its key, and what checkpoints held. `trust` are the keys of hubs, as they write
 * them; without any, what hubs say still counts as evidence of changes, and nobody is trusted. `null` for a log without entries.
 */
export function verifyLog(entries: readonly Entry[], trust: readonly string[]): Verification | null {
  const walk = walkOf(entries);
  if (walk === null) return null;
  const findings: SealFinding[] = [];
  const bySource = new Map<string, Entry[]>();
  for (const entry of entries) {
    const { source } = entry.wire;
    const some = bySource.get(source) ?? [];
    bySource.set(source, some);
    if (entry.walk === walk) some.push(entry);
    else findings.push({ kind: "other-walk", source, number: Number(entry.wire.sequence) });
  }
  const { chains, word, trusted } = chainsOf(bySource, new Set(trust));
  findings.push(...[...chains.values()].flatMap((chain) => chain.findings));
  findings.push(...[...chains.values()].flatMap((chain) => keyFindings(chain, word, trusted)));
  const all = [...chains.values()].flatMap((chain) => chain.entries);
  const checked = checkpointsOf(walk, chains, { trusted, isEvidence: evidence(trust, trusted) });
  findings.push(...checked.findings);
  const isClosed = closedAt(all);
  const sources = [...new Set([...chains.keys(), ...checked.missing])]
    .sort()
    .map((source): SourceVerified => {
      const chain = chains.get(source);
      const own = chain?.entries ?? [];
      const behind = own.filter(
        (one) => !checked.under.has(one) && !(trusted.has(source) && isCheckpoint(one.entry)),
      ).length;
      const best: Verdict = isClosed && behind === 0 ? "whole" : "intact";
      const said = admissionOf(source, word);
      return {
        source,
        by: said ? { name: said.name, role: said.role } : null,
        verdict: findings
          .filter((one) => one.source === source)
          .reduce<Verdict>((worst, { kind }) => worseOf(worst, VERDICT_OF[kind]), best),
        entries: own.length,
        sealed: own.filter(({ isSealed }) => isSealed).length,
        first: own[0]?.number ?? null,
        last: own.at(-1)?.number ?? null,
        behind,
      };
    });
  const tally = tallyOf(all);
  return {
    walk,
    verdict: sources.reduce<Verdict>((worst, one) => worseOf(worst, one.verdict), "whole"),
    sources,
    checkpoints: checked.checkpoints,
    findings: findings.toSorted(
      (a, b) => VERDICTS.indexOf(VERDICT_OF[b.kind]) - VERDICTS.indexOf(VERDICT_OF[a.kind]),
    ),
    root: tally.root,
    order: tally.order,
    code: voiceCode(walk, tally),
    entries: tally.entries,
  };
}

/** The walk that a log is of: that of its opening, else the one that most entries are of. */
function walkOf(entries: readonly Entry[]): WalkId | null {
  const opening = entries.find(({ wire }) => wire.type === "tetherline.walk.opened");
  if (opening) return opening.walk;
  const counts = new Map<WalkId, number>();
  for (const { walk } of entries) counts.set(walk, (counts.get(walk) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0] ?? null;
}

/** The chains of all sources. Hubs come first: the key of a device that does not name it is what a hub admitted it with. */
function chainsOf(bySource: ReadonlyMap<string, readonly Entry[]>, trust: ReadonlySet<string>) {
  const chains = new Map<string, SourceChain>();
  for (const [source, entries] of bySource) {
    if (isHub(source)) chains.set(source, sourceChain(source, entries, null));
  }
  const hubs = [...chains.values()];
  const trusted = trustedHubs(hubs, trust);
  const isEvidence = evidence([...trust], trusted);
  const word = wordOf(hubs.filter(({ source }) => isEvidence(source)));
  for (const [source, entries] of bySource) {
    if (!isHub(source))
      chains.set(source, sourceChain(source, entries, admittedKeys(source, word)?.at(-1) ?? null));
  }
  return { chains, word, trusted };
}

/** Whose word counts: that of trusted hubs, or, where nobody is to be trusted, that of every hub. */
const evidence = (trust: readonly string[], trusted: ReadonlySet<string>) => (source: string) =>
  trust.length === 0 || trusted.has(source);

/** As what a source was admitted last, or the device that it belongs to. */
function admissionOf(source: string, word: HubWord): Admission | null {
  return admissionsOf(source, word).at(-1) ?? null;
}

/** The keys that a source was admitted with, or its device; `null` where it was admitted with none. */
function admittedKeys(source: string, word: HubWord): readonly string[] | null {
  const keys = admissionsOf(source, word).flatMap(({ key }) => key ?? []);
  return keys.length === 0 ? null : keys;
}

/** Whether a hub says that it took entries of a source without seals, so that there may have been none. */
function isTakenUnsealed(source: string, word: HubWord): boolean {
  return admissionsOf(source, word).some(({ key }) => key === null);
}

function admissionsOf(source: string, { admitted }: HubWord): readonly Admission[] {
  return admitted.get(source) ?? admitted.get(deviceOf(source)) ?? [];
}

/** What there is against the key of a source. */
function keyFindings(
  chain: SourceChain,
  word: HubWord,
  trusted: ReadonlySet<string>,
): readonly SealFinding[] {
  const { source, key, entries, hasSeals } = chain;
  const known = isHub(source) ? vouchedKeys(source, word) : admittedKeys(source, word);
  if (known && !hasSeals && entries.length > 0 && !isTakenUnsealed(source, word))
    return [{ kind: "seals-stripped", source, number: null }];
  const found: SealFinding[] = [];
  const unsealed = entries.find(({ isSealed }) => !isSealed);
  if (known && key !== null && !known.includes(key)) found.push({ kind: "other-key", source, number: null });
  if (unsealed) found.push({ kind: "unsealed", source, number: unsealed.number });
  const isVouched = isHub(source) ? trusted.has(source) : trusted.size > 0 && known !== null;
  if (!isVouched && entries.length > 0) found.push({ kind: "nobody-vouches", source, number: null });
  const role = admissionOf(source, word)?.role;
  if (isRole(role)) {
    const beyond = entries.find(({ entry }) => roleRefusal(entry, role, deviceOf(source)) !== null);
    if (beyond) found.push({ kind: "other-role", source, number: beyond.number });
  }
  return found;
}

const isRole = (role: string | undefined): role is Role => ROLES.some((one) => one === role);

const isCheckpoint = ({ wire }: Entry) => wire.type === "tetherline.checkpoint.made";

interface Hubs {
  readonly trusted: ReadonlySet<string>;
  readonly isEvidence: (source: string) => boolean;
}

/** All checkpoints, what they say against the log, and what is under one that is trusted and fits. */
function checkpointsOf(
  walk: WalkId,
  chains: ReadonlyMap<string, SourceChain>,
  { trusted, isEvidence }: Hubs,
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
  const hasForks = [...chains.values()].some(({ forks }) => forks.size > 0);
  for (const { entry, number } of made) {
    const { source, data } = entry.wire;
    const checkpoint = checkpointIn(data);
    const isTrusted = trusted.has(source);
    if (!checkpoint) {
      if (isEvidence(source)) findings.push({ kind: "unreadable-checkpoint", source, number });
      checkpoints.push({ code: "", by: source, trusted: isTrusted, entries: 0, state: "unreadable" });
      continue;
    }
    const answer = heldAgainst(checkpoint, (of, at) => byNumber.get(of)?.get(at) ?? null);
    checkpoints.push({
      code: voiceCode(walk, checkpoint),
      by: source,
      trusted: isTrusted,
      entries: checkpoint.entries,
      state: answer.state,
    });
    if (!isEvidence(source)) continue;
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
  return { checkpoints, findings, under, missing };
}

/** Whether the walk is closed by the last that is said of it. */
function closedAt(all: readonly LinkedEntry[]): boolean {
  const said = all
    .map(({ entry }) => entry)
    .filter(({ wire }) => /^tetherline\.walk\.(closed|reopened)$/.test(wire.type))
    .toSorted(compareEntries);
  return said.at(-1)?.wire.type === "tetherline.walk.closed";
}
