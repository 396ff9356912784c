import { taskKey } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import type { Choice } from "./field-schema.ts";
import type { TableRow } from "./sheet-rows.ts";

/** The steps of a table, to choose one from. */
export const stepChoices = (rows: readonly TableRow[]): readonly Choice[] =>
  rows.flatMap(({ row }) =>
    row?.kind === "step" ? [{ id: row.step.id, name: `${row.number} ${row.step.do}` }] : [],
  );

/** The rows behind which others can be moved: every step, and the beginning of every task. */
export const moveChoices = (rows: readonly TableRow[]): readonly Choice[] =>
  rows.flatMap(({ key, row }) =>
    row?.kind === "step"
      ? [{ id: key, name: `${row.number} ${row.step.do}` }]
      : row?.kind === "task"
        ? [{ id: taskKey(row.task.id), name: words("write/first-in", { task: row.task.title }) }]
        : [],
  );

/** The rows that are selected, and the one behind them, for those without a keyboard. */
export function withNext(rows: readonly TableRow[], selected: readonly string[]): readonly string[] {
  const keys = rows.map(({ key }) => key);
  const next = keys[keys.indexOf(selected.at(-1) ?? "") + 1];
  return next === undefined ? selected : [...selected, next];
}
