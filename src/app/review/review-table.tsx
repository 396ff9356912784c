import type { ReactNode } from "react";

/** One row: a key and one cell for each column. */
export interface TableRow {
  readonly key: string;
  readonly cells: readonly ReactNode[];
}

interface ReviewTableProps {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
  /** Shown in place of a table without rows. */
  readonly empty: string;
}

/** A table with its heading and the number of its rows. Without rows, the text `empty` is shown instead. */
export function ReviewTable({ id, title, columns, rows, empty }: ReviewTableProps) {
  return (
    <section className="review-part" aria-labelledby={id}>
      <h2 id={id}>
        {title}
        {rows.length > 0 && (
          <>
            {" "}
            <span className="review-count">{rows.length}</span>
          </>
        )}
      </h2>
      {rows.length === 0 ? (
        <p className="hint">{empty}</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reachable by keyboard.
        <section className="review-table" tabIndex={0} aria-labelledby={id}>
          <table className="plain-table">
            <thead>
              <tr>
                {columns.map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, cells }) => (
                <tr key={key}>
                  {cells.map((cell, column) => (
                    <td key={columns[column]}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </section>
  );
}
