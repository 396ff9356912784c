import { csvParseRows } from "d3-dsv";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { parseInstant } from "../units/index.ts";
import { mergedSpans } from "./contact.ts";
import type { InstantSpan } from "./crossings.ts";

/** A row of a list that is not a valid span. */
export interface RowProblem {
  /** The row's number, counted from 1 and including the heading. */
  readonly row: number;
  readonly reason: Message;
}

/**
 * Reads a list of spans: CSV with the heading `start,end` and instants in the rows ([LGT3]). Overlapping spans are
 * merged, and invalid rows are reported.
 */
export function readListedSpans(text: string): {
  readonly spans: InstantSpan[];
  readonly problems: readonly RowProblem[];
} {
  const rows = csvParseRows(text.replace(/^\uFEFF/, ""));
  const spans: InstantSpan[] = [];
  const problems: RowProblem[] = [];
  const heading = rows[0]?.map((cell) => cell.trim().toLowerCase()).join(",");
  if (heading !== "start,end") problems.push({ row: 1, reason: message("spans/heading") });
  for (const [index, cells] of rows.entries()) {
    const row = index + 1;
    if (index === 0 || (cells.length === 1 && cells[0]?.trim() === "")) continue;
    const [start, end] = [parseInstant(cells[0]?.trim() ?? ""), parseInstant(cells[1]?.trim() ?? "")];
    if (cells.length !== 2) problems.push({ row, reason: message("spans/cells", { count: cells.length }) });
    else if (start === null || end === null) problems.push({ row, reason: message("spans/instants") });
    else if (end <= start) problems.push({ row, reason: message("spans/ends-first") });
    else spans.push({ start, end });
  }
  return { spans: mergedSpans(spans), problems };
}
