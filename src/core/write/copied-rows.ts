import { message } from "../../words/index.ts";
import type { ProcedureFile } from "../procedure/index.ts";
import { stepsPut, tasksPut } from "./added-rows.ts";
import { chosenIn } from "./chosen-rows.ts";
import type { Proposal } from "./proposal.ts";
import { impossible } from "./proposal.ts";
import type { FileStep, FileTask } from "./sheet.ts";

/** The chosen rows as JSON, as they stand in a file: a list of tasks where whole tasks are chosen, else of steps; empty for nothing. */
export function rowsCopied(file: ProcedureFile, rows: readonly string[]): string {
  const { tasks, steps } = chosenIn(file, rows);
  const copied = tasks.length > 0 ? tasks : steps;
  return copied.length === 0 ? "" : JSON.stringify(copied, null, 2);
}

type Kind = "task" | "step";

/** What an entry of a pasted list is; `null` for neither. What it holds is checked with the file it comes into. */
function kindOf(entry: unknown): Kind | null {
  if (typeof entry !== "object" || entry === null) return null;
  const { id, steps, by, do: action } = entry as Partial<FileTask & FileStep>;
  if (typeof id !== "string") return null;
  if (Array.isArray(steps)) return steps.every((one) => kindOf(one) === "step") ? "task" : null;
  return Array.isArray(by) && typeof action === "string" ? "step" : null;
}

/**
 * Puts what was copied, here or from another procedure or a text editor, beside a row ([WRT2]). Ids that are taken are made free; what
 * it names of crew, places and items stays as it is, and is a finding where there is no such thing.
 */
export function textPasted(file: ProcedureFile, row: string, text: string): Proposal {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return impossible(message("write/no-rows-in-text"));
  }
  const entries = Array.isArray(value) ? value : [value];
  const kinds = new Set(entries.map(kindOf));
  const [kind] = kinds;
  if (!kind || kinds.size > 1) return impossible(message("write/no-rows-in-text"));
  return kind === "task"
    ? tasksPut(file, row, entries as FileTask[])
    : stepsPut(file, row, entries as FileStep[]);
}
