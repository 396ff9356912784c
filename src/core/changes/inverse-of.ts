import type { Change, ProcedureFile } from "../procedure/index.ts";
import { applyChanges } from "./apply-changes.ts";
import { changesBetween } from "./changes-between.ts";
import { sameJson } from "./same-json.ts";

/** Thrown when asked to invert changes that cannot be applied to the file, and so never were. */
export class NeverAppliedError extends Error {
  override readonly name = "NeverAppliedError";
}

function after(file: ProcedureFile, changes: readonly Change[]): ProcedureFile {
  const applied = applyChanges(file, changes);
  if (applied.problem) throw new NeverAppliedError(`change ${applied.index} cannot be applied to this file`);
  return applied.file;
}

/** Runs of changes in which a rename stands alone, since what the others did is found by comparing. */
function runsOf(changes: readonly Change[]): Change[][] {
  const runs: Change[][] = [];
  for (const change of changes) {
    const last = runs.at(-1);
    if (!last || "rename" in change || last.some((one) => "rename" in one)) runs.push([change]);
    else last.push(change);
  }
  return runs;
}

function inverseOfRun(before: ProcedureFile, run: readonly Change[], next: ProcedureFile): Change[] {
  const [change] = run;
  if (!change || !("rename" in change)) return changesBetween(next, before);
  const { rename, to, list } = change;
  const back: Change = { rename: to, ...(list ? { list } : {}), to: rename };
  const undone = applyChanges(next, [back]);
  // Where something named the new id before there was one, it must not follow the old one.
  return sameJson(undone.file, before) ? [back] : changesBetween(next, before);
}

/**
 * The changes that undo changes which were applied to a file ([CHG4]): applied to what those made of it they give the file back,
 * equal but for the order of keys. Throws {@link NeverAppliedError} when the changes cannot be applied to the file.
 */
export function inverseOf(file: ProcedureFile, changes: readonly Change[]): Change[] {
  let current = file;
  const inverses: Change[][] = [];
  for (const run of runsOf(changes)) {
    const next = after(current, run);
    inverses.unshift(inverseOfRun(current, run, next));
    current = next;
  }
  return inverses.flat();
}
