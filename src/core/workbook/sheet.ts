import type { Duration, Instant } from "../units/index.ts";

/** What stands in a cell. A duration and an instant stay numbers, so that a spreadsheet can reckon with them. */
export type CellValue =
  | { readonly text: string }
  | { readonly duration: Duration }
  | { readonly instant: Instant };

/** One cell, which may reach over others to the right of it and below it. */
export interface Cell {
  readonly value: CellValue;
  readonly look?: "title" | "heading" | "task" | "block" | "joint";
  readonly rows?: number;
  readonly columns?: number;
}

/** A sheet of a workbook: a name, widths in letters, and rows of cells; `null` for an empty or a covered cell. */
export interface Sheet {
  readonly name: string;
  readonly widths: readonly number[];
  /** How many rows stay in sight while the others scroll. */
  readonly headRows: number;
  readonly rows: readonly (readonly (Cell | null)[])[];
}

/** A cell with a text. */
export const textCell = (text: string, look?: Cell["look"]): Cell => ({
  value: { text },
  ...(look && { look }),
});
