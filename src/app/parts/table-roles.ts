/**
 * What the parts of a table with the class `rows-on-phone` are to a screen reader. On a phone its rows are drawn as lists of their cells, and what
 * they are must not go with the layout. A cell has the name of its column as `data-column`.
 */
export const TABLE_ROLES = {
  table: { role: "table" },
  rows: { role: "rowgroup" },
  row: { role: "row" },
  head: { role: "columnheader" },
  rowHead: { role: "rowheader" },
  cell: { role: "cell" },
} as const;
