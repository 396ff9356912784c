import type { Entry } from "../log/index.ts";
import { linkOf, priorOf } from "./link-of.ts";

/** Where the chain of a source ends in a walk: what the next entry of the source follows. */
export interface ChainEnd {
  /** The number of the last entry in the sequence of its source. */
  readonly number: number;
  /** What the next entry says of it, the beginning of its link; `null` for an entry without a canonical form. */
  readonly prior: string | null;
  /** Whether it was made to be sealed, so that the key of the source stands on an entry at or before it. */
  readonly isChained: boolean;
}

/** The end that an entry of a source makes when it is its last one. */
export function chainEndOf({ wire }: Pick<Entry, "wire">): ChainEnd {
  const link = linkOf(wire);
  return { number: Number(wire.sequence), prior: link && priorOf(link), isChained: isChained({ wire }) };
}

/** Whether an entry was made to be sealed: it says what it follows, or names the key of its source. */
export function isChained({ wire }: Pick<Entry, "wire">): boolean {
  return wire["prior"] !== undefined || wire["sealkey"] !== undefined;
}

/**
 * An entry that was just made, put behind the end of its source's chain ([SEL2]); `null` where the source has no entry in the walk, or
 * the last one is not known. It names the key unless it follows an entry that was made to be sealed: those of a source that goes unsealed for a
 * while say nothing of it.
 */
export function chainedTo(entry: Entry, end: ChainEnd | null, publicKey: string): Entry {
  const prior = end?.prior ?? null;
  const wire = {
    ...entry.wire,
    ...(prior === null ? {} : { prior }),
    ...(prior !== null && end?.isChained ? {} : { sealkey: publicKey }),
  };
  return { ...entry, wire };
}
