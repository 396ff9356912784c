import type { Verification } from "./verification.ts";
import { differingGroups } from "./voice-code.ts";

/** A code from elsewhere, held against a log. */
export interface HeardCode {
  /** The groups, from 1, that differ from the code of all entries; none where they, or a checkpoint, have this code. */
  readonly differs: readonly number[];
  /** How many entries the code is of; `null` where it differs. */
  readonly entries: number | null;
}

/**
 * Holds a code that was read aloud against that of all entries of a log, then against those of its checkpoints, since the other site may hold less. `null` for
 * what is no code.
 */
export function heardCode(
  { code, entries, checkpoints }: Pick<Verification, "code" | "entries" | "checkpoints">,
  typed: string,
): HeardCode | null {
  const differs = differingGroups(code, typed);
  if (differs === null) return null;
  if (differs.length === 0) return { differs, entries };
  const same = checkpoints.findLast(
    (one) => one.code !== "" && differingGroups(one.code, typed)?.length === 0,
  );
  return same ? { differs: [], entries: same.entries } : { differs, entries: null };
}
