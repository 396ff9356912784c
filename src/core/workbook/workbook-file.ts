import type { CellObject, Cell as FileCell } from "write-excel-file/universal";
import writeExcelFile from "write-excel-file/universal";
import type { Cell, Sheet } from "./sheet.ts";

const DAY = 86_400_000;

/** Greys only: a printed sheet tells joint steps and headings by weight and border too. */
const LOOKS = {
  title: { fontWeight: "bold", fontSize: 14 },
  heading: { fontWeight: "bold", borderStyle: "thin", backgroundColor: "#e4e4e4", wrap: true },
  task: { fontWeight: "bold" },
  block: { borderStyle: "thin", wrap: true, alignVertical: "top" },
  joint: { borderStyle: "medium", wrap: true, alignVertical: "top", fontWeight: "bold" },
} as const satisfies Record<NonNullable<Cell["look"]>, Partial<CellObject>>;

/**
 * Writes sheets as a workbook of Office Open XML (ECMA-376, `.xlsx`). Durations are days with the format `[h]:mm:ss` and instants are dates of
 * UTC, to the millisecond; a text is never taken for a formula.
 */
export async function workbookFile(sheets: readonly Sheet[]): Promise<Blob> {
  return writeExcelFile(
    sheets.map(({ name, widths, headRows, rows }) => ({
      sheet: name,
      data: rows.map((row) => row.map((cell) => cell && fileCell(cell))),
      columns: widths.map((width) => ({ width })),
      stickyRowsCount: headRows,
      orientation: "landscape" as const,
    })),
  ).toBlob();
}

function fileCell({ value, look, rows, columns }: Cell): FileCell {
  const shape = {
    ...(look && LOOKS[look]),
    ...(rows && { rowSpan: rows }),
    ...(columns && { columnSpan: columns }),
  };
  if ("text" in value) return { ...shape, value: value.text, type: String };
  if ("duration" in value)
    return { ...shape, value: value.duration / DAY, type: Number, format: "[h]:mm:ss" };
  return { ...shape, value: new Date(value.instant), type: Date, format: "yyyy-mm-dd hh:mm:ss" };
}
