import type { Outline } from "../../core/procedure/index.ts";
import { clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { Performers } from "../parts/index.ts";
import { StepPictures } from "../pictures/index.ts";
import { StepAlerts, StepDo, TextInLanguage } from "../texts/index.ts";
import type { ReadRow } from "./read-rows.ts";
import { StepNotes } from "./step-notes.tsx";

interface ReadRowProps {
  readonly row: ReadRow;
  readonly outline: Outline;
  readonly strands: readonly Strand[];
}

/** A row of the reading screen: the heading of a task, or a step with everything about it. */
export function ReadRowItem({ row, outline, strands }: ReadRowProps) {
  if (row.kind === "task") {
    return (
      <li data-row={row.key} className="read-task">
        <h2>
          {row.number}{" "}
          <TextInLanguage list="tasks" id={row.task.id} field="title">
            {row.task.title}
          </TextInLanguage>{" "}
        </h2>
        {row.task.priority === "get-ahead" && <span className="hint">{words("read/get-ahead")}</span>}
        {row.task.closeout && <span className="hint">{words("read/closeout")}</span>}
      </li>
    );
  }
  const { step, number, performers } = row.entry;
  const { planned, slack } = row;
  return (
    <li data-row={row.key} className="read-step">
      <StepAlerts step={step} />
      <div className="read-line" data-bead>
        <span className="hint">{number}</span>
        <Performers lanes={performers} strands={strands} />
        <span className="read-do">
          <StepDo step={step} />
        </span>
        <span className="read-times">
          {planned ? `${clockText(planned.start)} – ${clockText(planned.finish)}` : words("read/not-in-plan")}
          {slack?.critical && ` · ${words("read/critical")}`}
        </span>
      </div>
      <StepPictures procedure={outline.procedure} step={step} />
      <StepNotes row={row} outline={outline} />
    </li>
  );
}
