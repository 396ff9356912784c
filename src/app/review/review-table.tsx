import type { ReactNode } from "react";
import { TABLE_ROLES } from "../parts/index.ts";

/** One row: a key and one cell for each column. */
export interface TableRow {
  readonly key: string;
  readonly cells: readonly ReactNode[];
  /** True for the row that the reader came for, which is brought into view. */
  readonly isSought?: boolean;
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
          <table {...TABLE_ROLES.table} className="plain-table rows-on-phone">
            <thead {...TABLE_ROLES.rows}>
              <tr {...TABLE_ROLES.row}>
                {columns.map((column) => (
                  <th key={column} {...TABLE_ROLES.head} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody {...TABLE_ROLES.rows}>
              {rows.map(({ key, cells, isSought = false }) => (
                <tr
                  key={key}
                  {...TABLE_ROLES.row}
                  ref={isSought ? bringIntoView : null}
                  aria-current={isSought ? "location" : undefined}
                >
                  {cells.map((cell, column) => (
                    <td key={columns[column]} {...TABLE_ROLES.cell} data-column={columns[column]}>
                      {cell}
                    </td>
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

const bringIntoView = (row: HTMLElement | null) => row?.scrollIntoView({ block: "center" });
