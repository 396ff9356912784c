import { rangesIn } from "./number-ranges.ts";
import type { LinkedEntry, Tally } from "./tally.ts";

/** What a hub held when it made a checkpoint ([SEL5]). */
export interface Checkpoint {
  readonly entries: number;
  /** For each source the ranges of numbers, ends included. */
  readonly held: ReadonlyMap<string, readonly (readonly [first: number, last: number])[]>;
  readonly root: string;
  readonly order: string;
}

/** Reads the data of a `checkpoint.made`; `null` when they are none. */
export function checkpointIn(data: unknown): Checkpoint | null {
  const { entries, held, root, order } = (data ?? {}) as Readonly<Record<string, unknown>>;
  if (typeof root !== "string" || typeof order !== "string") return null;
  if (typeof entries !== "number" || typeof held !== "object" || held === null) return null;
  const ranges = new Map<string, readonly (readonly [number, number])[]>();
  let count = 0;
  for (const [source, written] of Object.entries(held)) {
    const some = rangesIn(written);
    if (!some) return null;
    ranges.set(source, some);
    count += some.reduce((sum, [first, last]) => sum + last - first + 1, 0);
  }
  return count === entries ? { entries, held: ranges, root, order } : null;
}

/** Whether a log still has what a checkpoint held. */
export type CheckpointAnswer =
  | { readonly state: "fits"; readonly under: readonly LinkedEntry[] }
  /** For each source concerned the first number that is missing. */
  | { readonly state: "cut"; readonly missing: ReadonlyMap<string, number> }
  | { readonly state: "other-entries" | "other-order" };

/** A log as checkpoints ask for it. */
export interface HeldLog {
  readonly entryAt: (source: string, number: number) => LinkedEntry | null;
  readonly tallyOf: (part: ReadonlySet<LinkedEntry>) => Tally;
}

/** Holds the entries of a log, by source and number, against a checkpoint. */
export function heldAgainst(checkpoint: Checkpoint, { entryAt, tallyOf }: HeldLog): CheckpointAnswer {
  const under: LinkedEntry[] = [];
  const missing = new Map<string, number>();
  for (const [source, ranges] of checkpoint.held) {
    for (const [first, last] of ranges) {
      for (let number = first; number <= last && !missing.has(source); number += 1) {
        const one = entryAt(source, number);
        if (one) under.push(one);
        else missing.set(source, number);
      }
    }
  }
  if (missing.size > 0) return { state: "cut", missing };
  const tally = tallyOf(new Set(under));
  if (tally.root !== checkpoint.root) return { state: "other-entries" };
  return tally.order === checkpoint.order ? { state: "fits", under } : { state: "other-order" };
}
