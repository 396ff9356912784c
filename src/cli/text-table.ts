/** A column of a table: its heading, and whether its cells are numbers, which are aligned right. */
export interface Column {
  readonly heading: string;
  readonly figures?: boolean;
}

const GAP = "  ";
const widthOf = (text: string) => [...text].length;

/**
 * An aligned table with a rule under its headings. Every line ends with a line break and has no trailing blanks. A
 * table without rows gives an empty text.
 */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return "";
  const widths = columns.map(({ heading }, column) =>
    rows.reduce((width, row) => Math.max(width, widthOf(row[column] ?? "")), widthOf(heading)),
  );
  const line = (cells: readonly string[]) => {
    const aligned = columns.map(({ figures }, column) => {
      const cell = cells[column] ?? "";
      const blanks = " ".repeat((widths[column] ?? 0) - widthOf(cell));
      return figures ? blanks + cell : cell + blanks;
    });
    return `${aligned.join(GAP).trimEnd()}\n`;
  };
  const rule = widths.map((width) => "─".repeat(width));
  return [columns.map(({ heading }) => heading), rule, ...rows].map(line).join("");
}
