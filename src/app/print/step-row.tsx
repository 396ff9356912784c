import type { CourseStep } from "../../core/course/index.ts";
import type { Outline, OutlineStep, Step, StepRecord } from "../../core/procedure/index.ts";
import { measuredAgainst } from "../../core/quantity/index.ts";
import { clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { callsOf, limitWords, quantityWords, spanText } from "../parts/index.ts";
import { StepPictures } from "../pictures/index.ts";
import { StepDo, TextInLanguage, TextMark } from "../texts/index.ts";
import { AlertRow } from "./alert-row.tsx";
import { PrintedBox } from "./printed-box.tsx";
import { branchWords, conditionWords, effectWords } from "./sheet-words.ts";
import type { StepStanding } from "./step-standing.ts";
import { StrandMarks } from "./strand-marks.tsx";

interface StepRowProps {
  readonly outline: Outline;
  readonly step: Step;
  readonly number: string;
  /** `null` for a step of a contingency. */
  readonly entry: OutlineStep | null;
  /** `null` when the plan leaves the step out. */
  readonly planned: CourseStep | null;
  /** How the step stands in mid-walk; `null` on a sheet that no walk has begun to fill. */
  readonly standing?: StepStanding | null;
  /** How the step differs from another revision, in words; `null` where it does not. */
  readonly changed?: string | null;
}

/**
 * A step as a row of its task's table: alerts first, then the action, then what is to be recorded, confirmed and
 * decided.
 */
export function StepRow(props: StepRowProps) {
  const { outline, step, number, entry, planned, standing = null, changed = null } = props;
  const branch = branchWords(step);
  const conditions = conditionWords(outline, step, entry);
  const effects = effectWords(outline, step);
  return (
    <tr
      className={branch ? "print-step print-branch" : "print-step"}
      data-changed={changed === null ? undefined : true}
    >
      <th scope="row">{number}</th>
      <td>
        <StrandMarks outline={outline} by={step.by} />
      </td>
      <td className="print-action">
        {changed !== null && <p className="print-changed">{changed}</p>}
        {branch && <p className="print-when">{branch}</p>}
        {step.alerts.map(({ level, text }, place) => (
          <AlertRow key={`${level} ${text}`} level={level}>
            <TextInLanguage list="steps" id={step.id} field="alerts" part={place}>
              {text}
            </TextInLanguage>
          </AlertRow>
        ))}
        <p className="print-do">
          <StepDo step={step} />
        </p>
        <StepPictures procedure={outline.procedure} step={step} />
        {(conditions.length > 0 || effects.length > 0) && (
          <p className="print-detail">
            {conditions.length > 0 && <b>{[...conditions].join(words("figures/between-clauses"))}</b>}
            {conditions.length > 0 && effects.length > 0 && " · "}
            {effects.join(" · ")}
          </p>
        )}
        {step.check.length > 0 && (
          <p className="print-line">
            {step.check.map((counted, place) => (
              <span key={counted} className="print-outcome">
                <PrintedBox isTicked={standing?.progress.counted.includes(place) ?? false} />{" "}
                <TextInLanguage list="steps" id={step.id} field="check" part={place}>
                  {counted}
                </TextInLanguage>
              </span>
            ))}
          </p>
        )}
        {step.refs.length > 0 && <p className="print-detail">{words("read/refs", { refs: step.refs })}</p>}
        {step.records.map((record) => (
          <p key={record.id} className="print-line">
            <TextInLanguage list="steps" id={step.id} field="records" part={record.id}>
              {record.label ?? record.id}
            </TextInLanguage>{" "}
            <span className="print-blank">{takenWords(record, standing)}</span>
            <span className="print-limits">{limitWords(record) || words("print/no-limits")}</span>
          </p>
        ))}
        {step.confirm && (
          <p className="print-confirm">
            <PrintedBox isTicked={(standing?.progress.confirmed ?? null) !== null} />{" "}
            {words("print/confirms", {
              crew: callsOf(outline, [step.confirm.by]),
              text: step.confirm.text,
            })}
            <TextMark list="steps" id={step.id} field="confirm" />
          </p>
        )}
        {step.decide && (
          <p className="print-line">
            <b>
              <TextInLanguage list="decisions" id={step.decide.id} field="ask">
                {step.decide.ask}
              </TextInLanguage>
            </b>
            {step.decide.outcomes.map((outcome) => (
              <span key={outcome} className="print-outcome">
                <PrintedBox isTicked={standing?.outcome === outcome} /> {outcome}
                {outcome === step.decide?.expect && ` ${words("print/expected")}`}
              </span>
            ))}
            <span className="print-limits">{words("print/called", { decision: step.decide.id })}</span>
          </p>
        )}
        {standing && <StandingLines standing={standing} />}
      </td>
      <td className="print-planned">{planned ? spanText(planned.start, planned.finish) : "–"}</td>
      <td>
        <PrintedBox isTicked={standing?.ending === "done"} className="print-box-done" />
      </td>
      <td>
        <span className="print-blank print-blank-time">
          {standing?.ending === "done" && standing.at !== null && clockText(standing.at)}
        </span>
      </td>
    </tr>
  );
}

/** The latest value that was taken for a record; empty when none was. */
function takenWords(record: StepRecord, standing: StepStanding | null): string {
  const last = standing?.progress.records.findLast((one) => one.record === record.id);
  return last ? quantityWords(measuredAgainst(record, last.value)) : "";
}

/** Names a step that was skipped or is not performed, and what is outstanding of one that was done. */
function StandingLines({
  standing: { ending, at, progress, outstanding },
}: {
  readonly standing: StepStanding;
}) {
  const reason = progress.skipReason;
  return (
    <>
      {ending === "skipped" && at !== null && (
        <p className="print-line">
          <b>{reason ? words("print/skipped-because", { at, reason }) : words("print/skipped", { at })}</b>
        </p>
      )}
      {ending === "not-performed" && (
        <p className="print-line">
          <b>{words("print/not-performed")}</b>
        </p>
      )}
      {outstanding.map(({ kind, record, text }) => (
        <p key={`${kind} ${record}`} className="print-line">
          <PrintedBox /> <b>{words("print/outstanding", { what: text })}</b>
        </p>
      ))}
    </>
  );
}
