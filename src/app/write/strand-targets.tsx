import type { MouseEvent } from "react";
import type { FileStep } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import type { BraidPlaces, Strand } from "../braid/index.ts";
import "./strand-targets.css";

interface StrandTargetsProps {
  readonly braid: BraidPlaces;
  readonly strands: readonly Strand[];
  /** The ids of the crew, in the order of the strands. */
  readonly crew: readonly string[];
  readonly step: FileStep;
  readonly number: string;
  readonly onTurn: (crew: string) => void;
  /** Called with the row beside which the braid was tapped elsewhere. */
  readonly onRow: (key: string) => void;
}

/**
 * The strands at the row of a step, to be tapped ([WRT3]): who is tapped takes part in it, or no longer. A tap beside another row only
 * goes there, so that nobody joins a step unseen.
 */
export function StrandTargets({ braid, strands, crew, step, number, onTurn, onRow }: StrandTargetsProps) {
  const { rows, gap, width, strandX } = braid;
  const row = rows.find(({ key }) => key === step.id);
  if (!row) return null;
  const size = Math.min(gap, TARGET);
  const tap = (event: MouseEvent<HTMLElement>) => {
    const y = event.clientY - event.currentTarget.getBoundingClientRect().top;
    const near = rows.reduce((least, one) => (Math.abs(one.y - y) < Math.abs(least.y - y) ? one : least));
    onRow(near.key);
  };
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys of the table go from row to row. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: see above. */}
      <div className="write-strands-ground" style={{ width }} onClick={tap} />
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would need a legend that is seen. */}
      <div className="write-strands" role="group" aria-label={words("write/joint-at", { number })}>
        {strands.map(({ lane, call, short, colour }) => {
          const id = crew[lane] ?? "";
          const isPart = step.by.includes(id);
          const says = words(isPart ? "write/strand-out" : "write/strand-in", { crew: call, number });
          return (
            <button
              key={lane}
              type="button"
              className="write-strand"
              aria-pressed={isPart}
              aria-label={says}
              title={says}
              style={{
                left: strandX(lane) - size / 2,
                top: row.y - TARGET / 2,
                width: size,
                height: TARGET,
                borderColor: colour,
              }}
              onClick={() => onTurn(id)}
            >
              <span aria-hidden="true">{short}</span>
            </button>
          );
        })}
      </div>
    </>
  );
}

/** The height of a target, and its width where the strands leave room for it, in px. */
const TARGET = 48;
