import type { ProcedureFile } from "../../core/procedure/index.ts";
import { performersIn, placedStep, waitsIn } from "../../core/write/index.ts";
import type { Column } from "./cell-texts.ts";
import { typedTime } from "./minutes-text.ts";

/** As long as a text of a procedure may be. */
const MOST_LETTERS = 4000;

/** The value of what is typed in a cell of a row, `undefined` for what takes it out; `null` for what is none. */
export function readCell(file: ProcedureFile, row: string, column: Column, text: string): unknown {
  const step = placedStep(file, row)?.step;
  if (column === "who") return performersIn(text, file);
  if (column === "after") return step ? waitsIn(text, file, step) : null;
  if (column === "time") return text.trim() === "" ? undefined : typedTime(text);
  return text.trim() === "" || text.length > MOST_LETTERS ? null : text;
}
