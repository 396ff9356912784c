import type { Sides } from "../../core/effect/index.ts";
import "./effect.css";

/** A figure on both sides, in words. */
export interface SidesRow {
  readonly what: string;
  readonly sides: Sides<string>;
}

interface SidesTableProps {
  /** What the two columns are called. */
  readonly heads: Sides<string>;
  readonly rows: readonly SidesRow[];
}

/** A value on both sides, each put into words. */
export const bothInWords = <Value,>(
  { before, after }: Sides<Value>,
  text: (value: Value) => string,
): Sides<string> => ({ before: text(before), after: text(after) });

/** Figures before and after; those that differ stand out on the side after. */
export function SidesTable({ heads, rows }: SidesTableProps) {
  return (
    <table className="effect-table">
      <thead>
        <tr>
          <td />
          <th scope="col">{heads.before}</th>
          <th scope="col">{heads.after}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, sides }) => (
          <tr key={what} data-same={sides.before === sides.after || undefined}>
            <th scope="row">{what}</th>
            <td>{sides.before}</td>
            <td>{sides.after}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
