import type { Outline } from "../../core/procedure/index.ts";
import type { CrewId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";

interface StrandMarksProps {
  readonly outline: Outline;
  readonly by: readonly CrewId[];
}

/** The performers of a step, each with the dash of their strand, which can be told apart even in black and white. */
export function StrandMarks({ outline, by }: StrandMarksProps) {
  const strands = strandsOf(outline.crew);
  return (
    <ul className="print-who">
      {by.map((id) => {
        const strand = strands[outline.lane(id)];
        return (
          <li key={id} style={{ color: strand?.colour }}>
            <b>{strand?.call ?? id}</b>
            <svg width="40" height="6" aria-hidden="true">
              <line x1="0" x2="40" y1="3" y2="3" style={{ strokeDasharray: strand?.dash }} />
            </svg>
          </li>
        );
      })}
      {by.length > 1 && <li className="print-joint">{words("print/together")}</li>}
    </ul>
  );
}
