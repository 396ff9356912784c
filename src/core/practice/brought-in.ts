import type { Contingency } from "../procedure/index.ts";
import type { Ledger } from "../walk/index.ts";

/** The contingencies of a walk's procedure that were brought in and are in the plan still. */
export function broughtIn({ opened, inForce }: Ledger): readonly Contingency[] {
  const left = new Set(inForce.outline.procedure.contingencies.map(({ id }) => id));
  return opened.procedure.outline.procedure.contingencies.filter(({ id }) => !left.has(id));
}
