import { applyChanges } from "../changes/index.ts";
import type { Finding, ProcedureFile } from "../procedure/index.ts";

/** Checks a changed file and returns everything found in it, reading included. */
export type CheckFile = (file: ProcedureFile) => readonly Finding[];

/**
 * Returns the findings with those mends taken off that do not hold what they promise ([CHK1]). Each mend is tried: it
 * must take its own finding away and bring no new one. At most `most` mends are tried, and those beyond are taken off.
 * It pauses before each, so that whoever waits for something else may leave it there.
 */
export function* withTriedMends(
  file: ProcedureFile,
  findings: readonly Finding[],
  checkFile: CheckFile,
  most: number,
): Generator<void, Finding[]> {
  const before = new Set(findings.map(sameKey));
  let tried = 0;
  const kept: Finding[] = [];
  for (const one of findings) {
    if (!one.mend) {
      kept.push(one);
      continue;
    }
    yield;
    tried += 1;
    const mended = tried <= most ? applyChanges(file, one.mend).file : null;
    const after = mended && checkFile(mended).map(sameKey);
    const holds = after !== null && !after.includes(sameKey(one)) && after.every((key) => before.has(key));
    kept.push(holds ? one : { ...one, mend: null, mendSays: null });
  }
  return kept;
}

/** A key that stays when steps before it come or go, unlike the pointer. */
function sameKey({ code, steps, things }: Finding): string {
  return JSON.stringify([code, steps, things]);
}
