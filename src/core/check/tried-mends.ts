import { applyChanges } from "../changes/index.ts";
import type { Finding, ProcedureFile } from "../procedure/index.ts";

/** Checks a changed file and returns everything found in it, reading included. */
export type CheckFile = (file: ProcedureFile) => readonly Finding[];

/**
 * Returns the findings with those mends taken off that do not hold what they promise ([CHK1]). Each mend is tried: it
 * must take its own finding away and bring no new one. At most `most` mends are tried, and those beyond are taken off.
 */
export function withTriedMends(
  file: ProcedureFile,
  findings: readonly Finding[],
  checkFile: CheckFile,
  most: number,
): Finding[] {
  const before = new Set(findings.map(sameKey));
  let tried = 0;
  return findings.map((one) => {
    if (!one.mend) return one;
    tried += 1;
    const mended = tried <= most ? applyChanges(file, one.mend).file : null;
    const after = mended && checkFile(mended).map(sameKey);
    const holds = after !== null && !after.includes(sameKey(one)) && after.every((key) => before.has(key));
    return holds ? one : { ...one, mend: null, mendSays: null };
  });
}

/** A key that stays when steps before it come or go, unlike the pointer. */
function sameKey({ code, steps, things }: Finding): string {
  return JSON.stringify([code, steps, things]);
}
