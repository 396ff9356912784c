import type { Change, FieldChange, ProcedureFile } from "../procedure/index.ts";
import { applyChanges } from "./apply-changes.ts";
import { changesBetween, fieldsBetween } from "./changes-between.ts";
import { findMember } from "./find-member.ts";
import { heldBy } from "./list-table.ts";
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

/** The inverse of one change of fields, without a look at all the rest; `null` where more may have come of it than these fields. */
function inverseOfFields(before: ProcedureFile, change: FieldChange, next: ProcedureFile): Change[] | null {
  const { list = "steps", set = {}, unset = [] } = change;
  const held = heldBy(list);
  if (before.format !== next.format) return null;
  if (held !== null && (Object.hasOwn(set, held) || unset.includes(held))) return null;
  const [was, is] = [findMember(before, list, change.change), findMember(next, list, change.change)];
  if (was.problem || is.problem) return null;
  const back = fieldsBetween(is.member, was.member);
  if (!back) return [];
  return [
    {
      change: change.change,
      ...(change.list ? { list: change.list } : {}),
      ...(Object.keys(back.set).length > 0 ? { set: back.set } : {}),
      ...(back.unset.length > 0 ? { unset: back.unset } : {}),
    },
  ];
}

function inverseOfRun(before: ProcedureFile, run: readonly Change[], next: ProcedureFile): Change[] {
  const [change] = run;
  const ofFields = run.length === 1 && change && "change" in change && inverseOfFields(before, change, next);
  if (ofFields) return ofFields;
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
