import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { SheetRow } from "../../core/write/index.ts";
import { sheetOf } from "../../core/write/index.ts";
import type { BraidRow } from "../braid/index.ts";

/** A row of the table with what the braid needs; `null` stands for the heads of the columns. */
export interface TableRow extends BraidRow {
  readonly row: SheetRow | null;
}

/** The key of the row that holds the heads of the columns: no id has a colon. */
export const HEADS = "heads:";

const HEAD_ROW: TableRow = { key: HEADS, lanes: [], stage: "later", row: null };

/** Two rows that are drawn the same. */
function isSame(a: SheetRow, b: SheetRow): boolean {
  if (a.kind === "step") return b.kind === "step" && a.step === b.step && a.number === b.number;
  if (a.kind === "task")
    return (
      b.kind === "task" &&
      a.number === b.number &&
      a.task.title === b.task.title &&
      a.task.priority === b.task.priority &&
      a.task.closeout === b.task.closeout
    );
  return b.kind === "contingency" && a.contingency.title === b.contingency.title;
}

/** The rows of a file; one that is drawn as before is the same object, so that it need not be drawn again ([WRT2]). */
export function tableRows(file: ProcedureFile, before: readonly TableRow[]): readonly TableRow[] {
  const lanes = new Map(file.crew.map(({ id }, lane) => [id, lane]));
  const known = new Map(before.map((row) => [row.key, row]));
  const rows = sheetOf(file).map((row): TableRow => {
    const by =
      row.kind === "step" && row.contingency === null
        ? row.step.by.flatMap((crew) => lanes.get(crew) ?? [])
        : [];
    const old = known.get(row.key);
    if (old?.row && isSame(old.row, row) && old.lanes.join() === by.join()) return old;
    return {
      key: row.key,
      lanes: by,
      stage: row.kind === "step" && row.step.when ? "maybe" : "later",
      row,
    };
  });
  return [HEAD_ROW, ...rows];
}
