import { stringify } from "csv-stringify/browser/esm/sync";

/**
 * Returns rows as CSV (RFC 4180: comma, CRLF, quotes doubled, one heading line). A text that a spreadsheet would take for a
 * formula gets an apostrophe in front, which is how spreadsheets themselves mark text; numbers are never changed. `null`
 * and a missing column are an empty field, `true` and `false` are `yes` and `no`.
 */
export function csvOf<Column extends string>(
  columns: readonly Column[],
  rows: readonly Readonly<Partial<Record<Column, string | number | boolean | null>>>[],
): string {
  return stringify([...rows], {
    header: true,
    columns: [...columns],
    record_delimiter: "windows",
    // The library quotes a field only when it contains a whole record delimiter, but a single CR or LF needs quotes
    // too.
    quoted_match: /[\r\n]/,
    escape_formulas: true,
    cast: { boolean: (value) => (value ? "yes" : "no") },
  });
}
