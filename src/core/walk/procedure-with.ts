import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { applyChanges, changeProblemMessage } from "../changes/index.ts";
import type { Change } from "../procedure/index.ts";
import { outlineOf, parseProcedure } from "../procedure/index.ts";
import type { LaidOutProcedure } from "./laid-out-procedure.ts";

/** A procedure with changes made to it, or the reason why there is none. */
export type ChangedProcedure =
  | { readonly procedure: LaidOutProcedure; readonly problem: null }
  | { readonly procedure: null; readonly problem: Message };

const known = new WeakMap<LaidOutProcedure, WeakMap<readonly Change[], ChangedProcedure>>();

/**
 * Returns a procedure with changes made to it, laid out. The result is kept for each list of changes, so that folding
 * again does not read the procedure again.
 */
export function procedureWith(before: LaidOutProcedure, changes: readonly Change[]): ChangedProcedure {
  const kept = known.get(before) ?? new WeakMap<readonly Change[], ChangedProcedure>();
  known.set(before, kept);
  const found = kept.get(changes) ?? changed(before, changes);
  kept.set(changes, found);
  return found;
}

function changed(before: LaidOutProcedure, changes: readonly Change[]): ChangedProcedure {
  const applied = applyChanges(before.file, changes);
  if (applied.problem) {
    const why = changeProblemMessage(applied.problem);
    return { procedure: null, problem: message("amend/cannot-apply", { number: applied.index + 1, why }) };
  }
  const { procedure, file, findings } = parseProcedure(applied.file);
  if (procedure && file) return { procedure: { file, outline: outlineOf(procedure) }, problem: null };
  const why = findings.find(({ level }) => level === "error")?.message ?? message("walk/empty-procedure");
  return { procedure: null, problem: message("amend/unsound", { why }) };
}
