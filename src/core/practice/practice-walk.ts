import type { Ledger } from "../walk/index.ts";

/** The id of the procedure to learn by, and the name of its file. */
export const PRACTICE = "practice";

/** True for a rehearsal of the procedure to learn by, whatever its revision ([PRA1]). */
export function isPracticeWalk({ opened }: Pick<Ledger, "opened">): boolean {
  return opened.mode === "rehearsal" && opened.procedure.outline.procedure.id === PRACTICE;
}
