import type { CourseStep } from "../../core/course/index.ts";
import type { Outline, OutlineStep, Step } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { callsOf, limitWords, spanText } from "../parts/index.ts";
import { AlertRow } from "./alert-row.tsx";
import { branchWords, conditionWords, effectWords } from "./sheet-words.ts";
import { StrandMarks } from "./strand-marks.tsx";

interface StepRowProps {
  readonly outline: Outline;
  readonly step: Step;
  readonly number: string;
  /** `null` for a step of a contingency. */
  readonly entry: OutlineStep | null;
  /** `null` when the plan leaves the step out. */
  readonly planned: CourseStep | null;
}

/**
 * A step as a row of its task's table: alerts first, then the action, then what is to be recorded, confirmed and
 * decided.
 */
export function StepRow({ outline, step, number, entry, planned }: StepRowProps) {
  const branch = branchWords(step);
  const conditions = conditionWords(outline, step, entry);
  const effects = effectWords(outline, step);
  return (
    <tr className={branch ? "print-step print-branch" : "print-step"}>
      <th scope="row">{number}</th>
      <td>
        <StrandMarks outline={outline} by={step.by} />
      </td>
      <td className="print-action">
        {branch && <p className="print-when">{branch}</p>}
        {step.alerts.map((alert) => (
          <AlertRow key={`${alert.level} ${alert.text}`} alert={alert} />
        ))}
        <p className="print-do">{step.do}</p>
        {(conditions.length > 0 || effects.length > 0) && (
          <p className="print-detail">
            {conditions.length > 0 && <b>{[...conditions].join("; ")}</b>}
            {conditions.length > 0 && effects.length > 0 && " · "}
            {effects.join(" · ")}
          </p>
        )}
        {step.check.length > 0 && (
          <p className="print-line">
            {step.check.map((entry) => (
              <span key={entry} className="print-outcome">
                <span className="print-box" /> {entry}
              </span>
            ))}
          </p>
        )}
        {step.refs.length > 0 && <p className="print-detail">{words("read/refs", { refs: step.refs })}</p>}
        {step.records.map((record) => (
          <p key={record.id} className="print-line">
            {record.label ?? record.id} <span className="print-blank" />
            <span className="print-limits">{limitWords(record) || words("print/no-limits")}</span>
          </p>
        ))}
        {step.confirm && (
          <p className="print-confirm">
            <span className="print-box" />{" "}
            {words("print/confirms", {
              crew: callsOf(outline, [step.confirm.by]),
              text: step.confirm.text,
            })}
          </p>
        )}
        {step.decide && (
          <p className="print-line">
            <b>{step.decide.ask}</b>
            {step.decide.outcomes.map((outcome) => (
              <span key={outcome} className="print-outcome">
                <span className="print-box" /> {outcome}
                {outcome === step.decide?.expect && ` ${words("print/expected")}`}
              </span>
            ))}
            <span className="print-limits">{words("print/called", { decision: step.decide.id })}</span>
          </p>
        )}
      </td>
      <td className="print-planned">{planned ? spanText(planned.start, planned.finish) : "–"}</td>
      <td>
        <span className="print-box print-box-done" />
      </td>
      <td>
        <span className="print-blank print-blank-time" />
      </td>
    </tr>
  );
}
