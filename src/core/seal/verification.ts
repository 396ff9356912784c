import type { Entry } from "../log/index.ts";
import type { WalkId } from "../units/index.ts";

/**
 * What can be said of the entries of a source, or of a whole log ([SEL7]), from the best to the worst: closed and all under a
 * trusted hub's checkpoint; sealed and vouched for, with some entries behind the last checkpoint; some unsealed, or by keys that nobody trusted
 * vouches for; entries missing; two histories sealed with one key; something was changed, put in, or put in another order.
 */
export const VERDICTS = ["whole", "intact", "partly", "cut", "forked", "broken"] as const;

/** One of {@link VERDICTS}. */
export type Verdict = (typeof VERDICTS)[number];

/** What is wrong, or lacking, at one place of a log. */
export type SealFindingKind =
  /** A seal that does not fit its entry, or an entry that has no form that could be sealed. */
  | "seal-does-not-fit"
  /** Another key than the source was admitted with, a second one, or one that is refused. */
  | "other-key"
  /** An entry that does not follow the one before it: one of them was put in or changed. */
  | "does-not-follow"
  /** Two entries of one number, of which one is forged. */
  | "forged-twin"
  /** A source that was admitted with a key and has no seal left. */
  | "seals-stripped"
  /** An entry of an extract whose proof does not lead to its checkpoint. */
  | "not-proven"
  /** An entry of another walk. */
  | "other-walk"
  /** Other entries than a checkpoint held. */
  | "other-entries"
  /** Another order than at a checkpoint. */
  | "other-order"
  /** A checkpoint that cannot be read. */
  | "unreadable-checkpoint"
  /** Two entries of one number, or two that follow the same one, both sealed with the source's key. */
  | "two-histories"
  /** A number that is missing, or that a checkpoint held. */
  | "missing"
  /** An entry without a seal. */
  | "unsealed"
  /** A source whose key nobody trusted vouches for. */
  | "nobody-vouches"
  /** An entry that the role its device was admitted in may not make. */
  | "other-role";

/** A finding, at the first number of its source that it concerns; `number` is `null` for the source as a whole. */
export interface SealFinding {
  readonly kind: SealFindingKind;
  readonly source: string;
  readonly number: number | null;
}

/** How much each kind says against its source. */
export const VERDICT_OF: Readonly<Record<SealFindingKind, Verdict>> = {
  "seal-does-not-fit": "broken",
  "other-key": "broken",
  "does-not-follow": "broken",
  "forged-twin": "broken",
  "seals-stripped": "broken",
  "not-proven": "broken",
  "other-walk": "broken",
  "other-entries": "broken",
  "other-order": "broken",
  "unreadable-checkpoint": "broken",
  "two-histories": "forked",
  missing: "cut",
  unsealed: "partly",
  "nobody-vouches": "partly",
  "other-role": "intact",
};

/** What is said of an entry of another walk. */
export const otherWalk = ({ wire }: Entry): SealFinding => ({
  kind: "other-walk",
  source: wire.source,
  number: Number(wire.sequence),
});

/** Findings with the worst first. */
export const worstFirst = (findings: readonly SealFinding[]): readonly SealFinding[] =>
  findings.toSorted((a, b) => VERDICTS.indexOf(VERDICT_OF[b.kind]) - VERDICTS.indexOf(VERDICT_OF[a.kind]));

/** The worse of two verdicts. */
export const worseOf = (a: Verdict, b: Verdict): Verdict =>
  VERDICTS.indexOf(a) > VERDICTS.indexOf(b) ? a : b;

/** One source of a log. */
export interface SourceVerified {
  readonly source: string;
  /** As what a hub admitted it; `null` where none did. */
  readonly by: { readonly name: string; readonly role: string } | null;
  /** The name that a hub gives itself; `null` for a device, and for a hub that gives none. */
  readonly named: string | null;
  /** Its key in base64url; `null` where none is known. */
  readonly key: string | null;
  readonly verdict: Verdict;
  /** How many entries of it there are, each number once. */
  readonly entries: number;
  /** How many of these have a seal that fits. */
  readonly sealed: number;
  /** The lowest and the highest number; `null` without entries. */
  readonly first: number | null;
  readonly last: number | null;
  /** How many entries no trusted checkpoint held. */
  readonly behind: number;
}

/** A checkpoint in a log, and whether what it held is there still. */
export interface CheckpointVerified {
  readonly code: string;
  /** The hub that made it. */
  readonly by: string;
  readonly trusted: boolean;
  readonly entries: number;
  readonly state: "fits" | "cut" | "other-entries" | "other-order" | "unreadable" | "not-looked-at";
}

/** What a log is worth as a record ([SEL7]). It never says that an entry is true ([SEL9]). */
export interface Verification {
  readonly walk: WalkId;
  readonly verdict: Verdict;
  /** True when one seal a run was looked at, and not every one. */
  readonly isQuick: boolean;
  /** By name. */
  readonly sources: readonly SourceVerified[];
  /** In the order of the log. */
  readonly checkpoints: readonly CheckpointVerified[];
  /** The worst first. */
  readonly findings: readonly SealFinding[];
  /**
   * Whether what is missing may be surprises: it is of a rehearsal that is not closed, and until then hubs keep those from whoever
   * follows it.
   */
  readonly mayBeKeptBack: boolean;
  /** Of all entries of the walk that are in the log. */
  readonly root: string;
  readonly order: string;
  readonly code: string;
  readonly entries: number;
}
