import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { ProcedureFile } from "../procedure/index.ts";
import { formatDuration, inSeconds } from "../units/index.ts";
import { tasksPut } from "./added-rows.ts";
import type { TableReading } from "./column-uses.ts";
import { performersIn } from "./column-uses.ts";
import { FreeIds } from "./free-id.ts";
import type { ColumnUse, PastedTable } from "./pasted-table.ts";
import type { Proposal } from "./proposal.ts";
import { impossible } from "./proposal.ts";
import { readTime } from "./read-time.ts";
import type { FileStep, FileTask } from "./sheet.ts";
import { sheetOf } from "./sheet.ts";

/** What became of a row of a table: the step it is, and what of it could not be taken. */
export interface RowTaken {
  /** `null` where the row is no step. */
  readonly step: FileStep | null;
  /** Whole sentences. */
  readonly lost: readonly Message[];
}

/** What a table comes to: the gesture that puts its steps in, and every row with what could not be taken. */
export interface TableTaken {
  readonly proposal: Proposal;
  /** One for each row of the table, in its order. */
  readonly rows: readonly RowTaken[];
}

interface Draft {
  readonly step: FileStep;
  readonly task: string;
  readonly after: readonly string[];
  readonly lost: Message[];
}

/**
 * Makes steps of a table and puts them in as new tasks behind the task of a row of the procedure ([WRT12]). Rows with one text in the column of
 * tasks, one after the other, are one task; an empty field goes on with the one above. What a row comes after is named by
 * its number in the table, by a step's number in the procedure, or by a step's id. A row without an action or without anybody of the crew is no step; any other field that cannot be taken is left out, and both
 * are said.
 */
export function tablePut(
  file: ProcedureFile,
  row: string,
  table: PastedTable,
  { uses, unit }: TableReading,
  title: string,
): TableTaken {
  const ids = new FreeIds(sheetOf(file).map(({ key }) => key));
  const fieldOf = (fields: readonly string[], use: ColumnUse) => fields[uses.indexOf(use)] ?? "";
  let task = title;
  let above: readonly string[] | null = null;
  const drafts = table.rows.map((fields): Draft | readonly Message[] => {
    task = fieldOf(fields, "task") || task;
    const action = fieldOf(fields, "do");
    if (action === "") return [message("write/row-without-action")];
    const who = fieldOf(fields, "who");
    const by = who === "" ? above : performersIn(who, file);
    if (by === null) {
      return [
        who === "" ? message("write/row-without-performer") : message("write/row-of-somebody", { who }),
      ];
    }
    above = by;
    const lost: Message[] = [];
    const written = fieldOf(fields, "time");
    const time = readTime(written, unit);
    if (written !== "" && time === null) lost.push(message("write/row-time-lost", { written }));
    const where = fieldOf(fields, "where");
    const at = placeIn(file, where);
    if (where !== "" && at === null) lost.push(message("write/row-place-lost", { written: where }));
    const step: FileStep = {
      id: ids.next(action),
      by: [...by],
      do: action,
      ...(time !== null && inSeconds(time) >= 0 ? { time: formatDuration(time) } : {}),
      ...(at === null ? {} : { at }),
    };
    const after = fieldOf(fields, "after")
      .split(/[,;+&\s]+/)
      .filter(Boolean);
    return { step, task, after, lost };
  });
  const named = namesOf(file, table, drafts, uses);
  const rows = drafts.map((draft): RowTaken => {
    if (!("step" in draft)) return { step: null, lost: draft };
    const after: string[] = [];
    const lost: Message[] = [];
    for (const written of draft.after) {
      const id = named.get(written.toLowerCase());
      if (id === undefined) lost.push(message("write/row-after-lost", { written }));
      else if (id === draft.step.id) lost.push(message("write/row-after-itself"));
      else if (!after.includes(id)) after.push(id);
    }
    return {
      step: after.length > 0 ? { ...draft.step, after } : draft.step,
      lost: [...draft.lost, ...lost],
    };
  });
  return { proposal: proposalOf(file, row, drafts, rows), rows };
}

/** By which names the column `after` may call a step: its number in the table, else in the procedure, or its id. */
function namesOf(
  file: ProcedureFile,
  { rows }: PastedTable,
  drafts: readonly (Draft | readonly Message[])[],
  uses: readonly ColumnUse[],
): ReadonlyMap<string, string> {
  const named = new Map<string, string>();
  for (const line of sheetOf(file)) {
    if (line.kind !== "step") continue;
    named.set(line.number.toLowerCase(), line.step.id);
    named.set(line.step.id.toLowerCase(), line.step.id);
  }
  const numbers = uses.indexOf("number");
  for (const [index, draft] of drafts.entries()) {
    if (!("step" in draft)) continue;
    const number = numbers === -1 ? String(index + 1) : rows[index]?.[numbers];
    if (number) named.set(number.toLowerCase(), draft.step.id);
  }
  return named;
}

function placeIn(file: ProcedureFile, written: string): string | null {
  const name = written.toLowerCase();
  const place = (file.places ?? []).find(
    ({ id, label }) => id.toLowerCase() === name || label?.toLowerCase() === name,
  );
  return place?.id ?? null;
}

function proposalOf(
  file: ProcedureFile,
  row: string,
  drafts: readonly (Draft | readonly Message[])[],
  rows: readonly RowTaken[],
): Proposal {
  const tasks: { title: string; steps: FileStep[] }[] = [];
  for (const [index, draft] of drafts.entries()) {
    const step = rows[index]?.step;
    if (!step || !("step" in draft)) continue;
    const last = tasks.at(-1);
    if (last && last.title === draft.task) last.steps.push(step);
    else tasks.push({ title: draft.task, steps: [step] });
  }
  if (tasks.length === 0) return impossible(message("write/no-steps-in-table"));
  const made: FileTask[] = tasks.map(({ title, steps }) => ({ id: title, title, steps }));
  return tasksPut(file, row, made);
}
