import type { SheetRow } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import type { TableRow } from "./sheet-rows.ts";

/** Where rows that are dragged would go. */
export interface DropPlace {
  /** The row to which they are moved; `null` for the beginning of everything. */
  readonly to: string | null;
  /** The row under which the line is drawn. */
  readonly under: string;
  /** What the line says. */
  readonly says: string;
}

/** The keys of all rows that move when some are dragged: a task takes its steps along. */
export function rowsAlong(rows: readonly TableRow[], dragged: readonly string[]): ReadonlySet<string> {
  const along = new Set(dragged);
  let isIn = false;
  for (const { key, row } of rows) {
    if (row?.kind === "step") {
      if (isIn) along.add(key);
    } else isIn = row?.kind === "task" && along.has(key);
  }
  return along;
}

const isHeading = ({ row }: TableRow) => row === null || row.kind === "contingency";

/**
 * Where rows go that are let go under a row of the table, by its place in the list; `null` where that is nowhere. Steps go where they are
 * let go, behind a heading into the first task there; tasks go behind the task there.
 */
export function dropPlace(
  rows: readonly TableRow[],
  dragged: readonly string[],
  under: number,
): DropPlace | null {
  const along = rowsAlong(rows, dragged);
  const at = rows.findLastIndex(({ key }, index) => index <= under && !along.has(key));
  const above = rows[at];
  if (!above) return null;
  const areTasks = rows.some(({ key, row }) => row?.kind === "task" && dragged.includes(key));
  const drawn = areTasks ? taskEnd(rows, at) : isHeading(above) ? rows[at + 1] : above;
  if (!drawn || (!areTasks && isHeading(drawn))) return null;
  return {
    to: above.row === null ? null : above.key,
    under: drawn.key,
    says: areTasks ? taskWords(taskOf(rows, at)) : stepWords(drawn.row),
  };
}

/** The last row of the task in which a row stands; a heading itself. */
function taskEnd(rows: readonly TableRow[], at: number): TableRow | undefined {
  const next = rows.findIndex(({ row }, index) => index > at && row?.kind !== "step");
  const row = rows[at];
  return row && isHeading(row) ? row : rows[next === -1 ? rows.length - 1 : next - 1];
}

/** The task in which a row stands, or the heading that it is. */
const taskOf = (rows: readonly TableRow[], at: number): SheetRow | null =>
  rows.slice(0, at + 1).findLast(({ row }) => row?.kind !== "step")?.row ?? null;

function taskWords(row: SheetRow | null): string {
  if (row?.kind === "task") return words("write/drag-behind-task", { task: row.task.title });
  return row?.kind === "contingency"
    ? words("write/first-in", { task: row.contingency.title })
    : words("write/drag-first-of-all");
}

function stepWords(row: SheetRow | null): string {
  if (row?.kind === "step") return words("write/drag-behind", { number: row.number });
  return row?.kind === "task" ? words("write/first-in", { task: row.task.title }) : "";
}
