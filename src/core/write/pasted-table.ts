import { dsvFormat } from "d3-dsv";

/** What a column of a pasted table is taken for. */
export type ColumnUse = "number" | "task" | "who" | "do" | "time" | "where" | "after" | "none";

/** A table that was copied from a spreadsheet or a CSV file. */
export interface PastedTable {
  /** The headings, where the first row has some; `null` where it is a row like the others. */
  readonly headings: readonly string[] | null;
  /** Rows of equal length, without empty ones. */
  readonly rows: readonly (readonly string[])[];
}

/** Headings that columns commonly have, in lower case without signs. From memory, of many planners' tables. */
const HEADINGS: Readonly<Record<Exclude<ColumnUse, "none">, readonly string[]>> = {
  number: ["no", "nr", "number", "step no", "step number", "id", "ref", "#"],
  task: ["task", "group", "section", "block", "phase"],
  who: ["who", "by", "crew", "performer", "performers", "crewmember", "crew member", "ev"],
  do: ["do", "step", "action", "activity", "description", "what", "procedure"],
  time: ["time", "minutes", "min", "duration", "length", "likely", "mins", "seconds", "sec", "hours"],
  where: ["where", "place", "location", "at", "worksite"],
  after: ["after", "predecessor", "predecessors", "comes after", "depends on", "waits for"],
};

/** The most rows that are read; what is beyond them is not a table of steps. */
export const MOST_TABLE_ROWS = 2000;

/**
 * Reads a table: fields between tabs as spreadsheets copy them, else between semicolons or commas, quoted by RFC 4180 where they
 * have line breaks. Blanks around fields fall away. `null` where there is no row, only one column, or more than {@link MOST_TABLE_ROWS} rows.
 */
export function pastedTable(text: string): PastedTable | null {
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
  const isHead = head.filter((field) => headingUse(field) !== "none").length >= 2;
  return isHead ? { headings: head, rows: rows.slice(1) } : { headings: null, rows };
}

/** What a heading says that its column is. */
export function headingUse(heading: string): ColumnUse {
  const plain = heading
    .toLowerCase()
    .replaceAll(/\([^)]*\)|[.:*]/g, "")
    .replaceAll(/\s+/g, " ")
    .trim();
  const uses = Object.entries(HEADINGS) as [Exclude<ColumnUse, "none">, readonly string[]][];
  return uses.find(([, names]) => names.includes(plain))?.[0] ?? "none";
}
