import type { WalkId } from "../units/index.ts";
import { base64urlOf } from "./base64url.ts";
import type { Checkpoint } from "./checkpoint.ts";
import { checkpointIn } from "./checkpoint.ts";
import type { Extract } from "./extract.ts";
import { isCheckpoint, isHub } from "./hub-word.ts";
import { rootByPath } from "./inclusion.ts";
import { leafOf } from "./merkle-root.ts";
import { placesIn, rangesWithout } from "./places.ts";
import { chainsOf, keyFindings } from "./source-keys.ts";
import { sourcesVerified, worstOf } from "./sources-verified.ts";
import type { LinkedEntry } from "./tally.ts";
import type { SealFinding, SourceVerified, Verdict } from "./verification.ts";
import { otherWalk, worstFirst } from "./verification.ts";
import { voiceCode } from "./voice-code.ts";
import { bySourceOf } from "./walk-of.ts";

/** What an extract is worth as a record: of what it has in full, never of what was left out. */
export interface ExtractVerified {
  readonly walk: WalkId;
  /** Whole: a trusted hub's checkpoint held all of it. Missing entries are no finding, since they were left out. */
  readonly verdict: Verdict;
  readonly sources: readonly SourceVerified[];
  readonly findings: readonly SealFinding[];
  /** The checkpoint that it is proven by; `null` where it is not in the extract, not sealed, or cannot be read. */
  readonly checkpoint: {
    readonly by: string;
    readonly trusted: boolean;
    readonly entries: number;
    readonly root: string;
    readonly order: string;
    readonly code: string;
  } | null;
  /** How many entries it has in full. */
  readonly entries: number;
  /** Of each source, by name, the numbers that the checkpoint held and that are not here, as ranges such as `1-56,58`. */
  readonly leftOut: readonly { readonly source: string; readonly numbers: string }[];
}

/**
 * Verifies an extract: the seals of what it has in full, who vouches for their keys, and that each proof leads to the checkpoint. `trust` are the keys of hubs, as
 * they write them. `null` for an extract without entries.
 */
export function verifyExtract(extract: Extract, trust: readonly string[]): ExtractVerified | null {
  const log = bySourceOf(extract.entries.map(({ entry }) => entry));
  if (!log) return null;
  const { walk, bySource, others } = log;
  const { chains, word, trusted } = chainsOf(bySource, new Set(trust), { isQuick: false });
  const all = [...chains.values()].flatMap((chain) => chain.entries);
  const paths = new Map(extract.entries.map(({ entry, path }) => [entry, path]));
  const { source, number } = extract.checkpoint;
  const made = all.find((one) => one.entry.wire.source === source && one.number === number);
  const isOne = made?.isSealed === true && isHub(source) && isCheckpoint(made.entry);
  const checkpoint = isOne ? checkpointIn(made.entry.wire.data) : null;
  const isProven = provenBy(checkpoint, paths);
  const findings: SealFinding[] = [
    ...others.map(otherWalk),
    ...[...chains.values()].flatMap((chain) => chain.findings.filter(({ kind }) => kind !== "missing")),
    ...[...chains.values()].flatMap((chain) => keyFindings(chain, word, trusted)),
    ...(checkpoint ? [] : [{ kind: "unreadable-checkpoint", source, number } as const]),
    ...all
      .filter((one) => checkpoint && paths.get(one.entry) != null && !isProven(one))
      .map((one) => ({ kind: "not-proven", source: one.entry.wire.source, number: one.number }) as const),
  ];
  const isTrusted = trusted.has(source);
  const sources = sourcesVerified([...chains.keys(), source], {
    chains,
    word,
    findings,
    // What a trusted hub says of devices and hubs is vouched for by its own seal.
    isBehind: (one) => !(isTrusted && isProven(one)) && !trusted.has(one.entry.wire.source),
    best: (behind) => (behind === 0 ? "whole" : "intact"),
  });
  return {
    walk,
    verdict: worstOf(sources),
    sources,
    findings: worstFirst(findings),
    checkpoint: checkpoint && {
      by: source,
      trusted: isTrusted,
      entries: checkpoint.entries,
      root: checkpoint.root,
      order: checkpoint.order,
      code: voiceCode(walk, checkpoint),
    },
    entries: all.length,
    leftOut: checkpoint
      ? [...checkpoint.held.keys()].sort().flatMap((of) => {
          const own = chains.get(of)?.entries.map((one) => one.number) ?? [];
          const numbers = rangesWithout(checkpoint, of, own);
          return numbers === "" ? [] : [{ source: of, numbers }];
        })
      : [],
  };
}

/** Whether the proof of an entry leads from its link, at its place, to the root of the checkpoint. */
function provenBy(
  checkpoint: Checkpoint | null,
  paths: ReadonlyMap<LinkedEntry["entry"], readonly Uint8Array[] | null>,
): (one: LinkedEntry) => boolean {
  if (!checkpoint) return () => false;
  const placeOf = placesIn(checkpoint);
  return ({ entry, number, link }) => {
    const path = paths.get(entry);
    const place = placeOf(entry.wire.source, number);
    if (!path || place === null) return false;
    const root = rootByPath(leafOf(link), { place, size: checkpoint.entries }, path);
    return root !== null && base64urlOf(root) === checkpoint.root;
  };
}
