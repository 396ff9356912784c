import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { SheetRow } from "../../core/write/index.ts";
import { sheetOf } from "../../core/write/index.ts";
import type { BraidRow } from "../braid/index.ts";
import type { CellTexts } from "./cell-texts.ts";
import { cellNames, cellTexts } from "./cell-texts.ts";

/** A row of the table with what the braid needs. */
export interface TableRow extends BraidRow {
  /** `null` stands for the heads of the columns. */
  readonly row: SheetRow | null;
  /** What stands in its cells; `null` for what is no step. */
  readonly texts: CellTexts | null;
}

/** The key of the row that holds the heads of the columns: no id has a colon. */
export const HEADS = "heads:";

/** What the key of a row begins with that is being written, and is no step or task yet. */
const DRAFT = "draft:";

/** A row that is being written: nothing is made before it has a text. */
export interface Draft {
  /** Tells it from the drafts before it. */
  readonly number: number;
  readonly kind: "step" | "task";
  /** The row behind which it is put. */
  readonly behind: string;
  /** Who was chosen to do it; `null` while that is taken over from the step beside it. */
  readonly by: readonly string[] | null;
}

/** Whether a key is that of a row that is being written. */
export const isDraft = (key: string): boolean => key.startsWith(DRAFT);

/** The key of a row that is being written. */
export const draftKey = ({ number }: Draft): string => `${DRAFT}${number}`;

const HEAD_ROW: TableRow = { key: HEADS, lanes: [], stage: "later", row: null, texts: null };

/** Two rows that are drawn the same, and say the same of what they are about to whoever reads them. */
function isSame(a: SheetRow, b: SheetRow): boolean {
  if (a.kind === "step") return b.kind === "step" && a.step === b.step && a.number === b.number;
  if (a.kind === "task") return b.kind === "task" && a.task === b.task && a.number === b.number;
  return b.kind === "contingency" && a.contingency === b.contingency;
}

const isSameTexts = (a: CellTexts | null, b: CellTexts | null) =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.who === b.who &&
    a.where === b.where &&
    a.after === b.after &&
    a.moves === b.moves &&
    a.within === b.within);

/** The rows of a file; one that is drawn as before is the same object, so that it need not be drawn again ([WRT2]). */
export function tableRows(file: ProcedureFile, before: readonly TableRow[]): readonly TableRow[] {
  const lanes = new Map(file.crew.map(({ id }, lane) => [id, lane]));
  const names = cellNames(file);
  const known = new Map(before.map((row) => [row.key, row]));
  const rows = sheetOf(file).map((row): TableRow => {
    const by =
      row.kind === "step" && row.contingency === null
        ? row.step.by.flatMap((crew) => lanes.get(crew) ?? [])
        : [];
    const texts = row.kind === "step" ? cellTexts(row.step, names) : null;
    const old = known.get(row.key);
    if (old?.row && isSame(old.row, row) && isSameTexts(old.texts, texts) && old.lanes.join() === by.join())
      return old;
    return {
      key: row.key,
      lanes: by,
      stage: row.kind === "step" && row.step.when ? "maybe" : "later",
      row,
      texts,
    };
  });
  return [HEAD_ROW, ...rows];
}

/** Rows with one that is being written in its place: a step behind its row, a task behind the task there. */
export function withDraft(rows: readonly TableRow[], draft: Draft | null): readonly TableRow[] {
  const at = draft ? rows.findIndex(({ key }) => key === draft.behind) : -1;
  if (!draft || at === -1) return rows;
  const next = rows.findIndex(({ row }, index) => index > at && row?.kind !== "step");
  const place = draft.kind === "step" ? at + 1 : next === -1 ? rows.length : next;
  const row: TableRow = { key: draftKey(draft), lanes: [], stage: "later", row: null, texts: null };
  return rows.toSpliced(place, 0, row);
}
