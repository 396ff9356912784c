import type { Strand } from "../braid/index.ts";

/** The performers of a step, each with the mark of their strand. A name is never broken over two lines. */
export function Performers({
  lanes,
  strands,
}: {
  readonly lanes: readonly number[];
  readonly strands: readonly Strand[];
}) {
  return (
    <span className="performers">
      {lanes.map((lane, index) => {
        const strand = strands[lane];
        return strand ? (
          <span key={lane} style={{ "--lane": strand.colour } as React.CSSProperties}>
            {index > 0 && <i aria-hidden="true">+</i>}
            <b>{lanes.length > 1 ? strand.short : strand.call}</b>
          </span>
        ) : null;
      })}
    </span>
  );
}
