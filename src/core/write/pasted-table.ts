import { dsvFormat } from "d3-dsv";
import type { Message, Say } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** What a column of a pasted table is taken for. */
export type ColumnUse = "number" | "task" | "who" | "do" | "time" | "where" | "after" | "none";

/** A table that was copied from a spreadsheet or a CSV file. */
export interface PastedTable {
  /** The headings, where the first row has some; `null` where it is a row like the others. */
  readonly headings: readonly string[] | null;
  /** Rows of equal length, without empty ones. */
  readonly rows: readonly (readonly string[])[];
}

/** Headings that columns commonly have, in small letters and without signs, by what they stand for. */
export type HeadingNames = Readonly<Record<Exclude<ColumnUse, "none">, readonly string[]>>;

/** The headings in the language that `say` speaks; tables of other languages are taken by what stands in them. */
export function headingNames(say: Say): HeadingNames {
  const names = (written: Message) => say(written).split("|");
  return {
    number: names(message("write/headings-number")),
    task: names(message("write/headings-task")),
    who: names(message("write/headings-who")),
    do: names(message("write/headings-do")),
    time: names(message("write/headings-time")),
    where: names(message("write/headings-where")),
    after: names(message("write/headings-after")),
  };
}

/** The most rows that are read; what is beyond them is not a table of steps. */
const MOST_TABLE_ROWS = 2000;

/**
 * Reads a table: fields between tabs as spreadsheets copy them, else between semicolons or commas, quoted by RFC 4180 where they
 * have line breaks. Blanks around fields fall away. `null` where there is no row, only one column, or more than 2,000 rows.
 */
export function pastedTable(text: string, names: HeadingNames): PastedTable | null {
  const [first = ""] = text.split(/\r?\n/, 1);
  const separator = ["\t", ";", ","].find((one) => first.includes(one));
  if (separator === undefined) return null;
  const read = dsvFormat(separator)
    .parseRows(text.replaceAll("\r\n", "\n"))
    .map((row) => row.map((field) => field.trim()))
    .filter((row) => row.some((field) => field !== ""));
  const width = Math.max(0, ...read.map((row) => row.length));
  if (read.length === 0 || width < 2 || read.length > MOST_TABLE_ROWS) return null;
  const rows = read.map((row) => [...row, ...Array<string>(width - row.length).fill("")]);
  const [head = []] = rows;
  const isHead = head.filter((field) => headingUse(field, names) !== "none").length >= 2;
  return isHead ? { headings: head, rows: rows.slice(1) } : { headings: null, rows };
}

/** What a heading says that its column is. */
export function headingUse(heading: string, names: HeadingNames): ColumnUse {
  const plain = heading
    .toLowerCase()
    .replaceAll(/\([^)]*\)|[.:*]/g, "")
    .replaceAll(/\s+/g, " ")
    .trim();
  const uses = Object.entries(names) as [Exclude<ColumnUse, "none">, readonly string[]][];
  return uses.find(([, known]) => known.includes(plain))?.[0] ?? "none";
}
