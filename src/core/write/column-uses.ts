import type { ProcedureFile } from "../procedure/index.ts";
import type { ColumnUse, HeadingNames, PastedTable } from "./pasted-table.ts";
import { headingUse } from "./pasted-table.ts";
import type { TimeUnit } from "./read-time.ts";
import { readTime } from "./read-time.ts";

/** How a table is taken: what each column is, and what a bare number in its times stands for. */
export interface TableReading {
  readonly uses: readonly ColumnUse[];
  readonly unit: TimeUnit;
}

/** The share of a column's filled fields that satisfy a condition from which the column is taken for that. */
const MOSTLY = 0.7;

/**
 * How a table is likely meant: by its headings, and where a column has none by what stands in it: names of the crew, times, the longest texts. Each use is
 * given to one column. It is a guess for a person to look at.
 */
export function tableReading(table: PastedTable, file: ProcedureFile, names: HeadingNames): TableReading {
  const { headings, rows } = table;
  const width = rows[0]?.length ?? headings?.length ?? 0;
  const uses: ColumnUse[] = Array.from({ length: width }, () => "none");
  const give = (use: ColumnUse, column: number | undefined) => {
    if (column !== undefined && uses[column] === "none" && !uses.includes(use)) uses[column] = use;
  };
  for (const [column, heading] of (headings ?? []).entries()) {
    const use = headingUse(heading, names);
    if (use !== "none") give(use, column);
  }
  const free = () => uses.flatMap((use, column) => (use === "none" ? [column] : []));
  const shareOf = (column: number, isSuch: (field: string) => boolean) => {
    const filled = rows.flatMap((row) => row[column] || []);
    return filled.length === 0 ? 0 : filled.filter(isSuch).length / filled.length;
  };
  if (headings === null) {
    give(
      "who",
      free().find((column) => shareOf(column, (field) => performersIn(field, file) !== null) >= MOSTLY),
    );
    const isTime = (column: number) =>
      shareOf(column, (field) => readTime(field, "minutes") !== null) >= MOSTLY;
    const timed = free().filter(isTime);
    // The first column of whole numbers that count up is a numbering.
    give(
      "number",
      timed.find((column) => isCounting(rows.map((row) => row[column] ?? ""))),
    );
    give(
      "time",
      timed.find((column) => uses[column] === "none"),
    );
    const lengthIn = (column: number) => rows.reduce((sum, row) => sum + (row[column] ?? "").length, 0);
    give("do", free().toSorted((a, b) => lengthIn(b) - lengthIn(a))[0]);
  }
  const time = uses.indexOf("time");
  return { uses, unit: unitOf(headings?.[time] ?? "") };
}

function isCounting(fields: readonly string[]): boolean {
  const numbers = fields.filter(Boolean).map(Number);
  return numbers.length > 1 && numbers.every((number, index) => number === (numbers[0] ?? 0) + index);
}

function unitOf(heading: string): TimeUnit {
  const plain = heading.toLowerCase();
  if (/\b(s|sec|secs|seconds)\b/.test(plain)) return "seconds";
  return /\b(h|hr|hrs|hours?)\b/.test(plain) ? "hours" : "minutes";
}

/** The crew members that a field names by call sign or id, such as `EV1 + EV2` or `ev1, iv`; `null` when it names somebody else or nobody. */
export function performersIn(field: string, { crew }: ProcedureFile): readonly string[] | null {
  const names = field
    .split(/\s*(?:[+,;/&\n]|\band\b)\s*/i)
    .map((name) => name.trim().toLowerCase())
    .filter(Boolean);
  const found = names.map((name) =>
    crew.find(({ id, call }) => id.toLowerCase() === name || call.toLowerCase() === name),
  );
  if (found.length === 0 || found.includes(undefined)) return null;
  return [...new Set(found.flatMap((member) => member?.id ?? []))];
}
