import type { Change } from "../procedure/index.ts";
import type { LaidOutProcedure } from "../walk/index.ts";

const known = new WeakMap<LaidOutProcedure, Map<string, readonly Change[]>>();

/**
 * Returns the same list for changes of one procedure that say the same, so that what they come to is worked out only once
 * although they are put together anew.
 */
export function oneListOf(procedure: LaidOutProcedure, changes: readonly Change[]): readonly Change[] {
  const kept = known.get(procedure) ?? new Map<string, readonly Change[]>();
  known.set(procedure, kept);
  const key = JSON.stringify(changes);
  const found = kept.get(key) ?? changes;
  kept.set(key, found);
  return found;
}
