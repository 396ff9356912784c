import type { Change, Fields, ProcedureFile } from "../procedure/index.ts";
import { CHANGE_LISTS } from "../procedure/index.ts";
import { keyFor } from "./list-table.ts";
import { rollOf } from "./members.ts";

/**
 * Returns a function that gives the fields of what a change changes as they stand in a file; no fields for a change of
 * another form, and for what is not in the file.
 */
export function fieldsBefore(file: ProcedureFile): (change: Change) => Fields {
  const rolls = new Map(CHANGE_LISTS.map((list) => [list, rollOf(file, list)]));
  return (change) => {
    if ("head" in change) return file;
    if (!("change" in change)) return {};
    const { list = "steps" } = change;
    return rolls.get(list)?.members.get(keyFor(list, change.change))?.member ?? {};
  };
}
