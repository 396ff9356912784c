import { Fragment } from "react";
import { waitMessage, windowLabel } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf, limitWords, locationWords, stateWords } from "../parts/index.ts";
import { TextMark } from "../texts/index.ts";
import { FindingItem } from "./finding-item.tsx";
import type { PreparedStep } from "./read-rows.ts";

interface StepNotesProps {
  readonly row: PreparedStep;
  readonly outline: Outline;
}

/** Everything about a step except its action: conditions, records, moves, waits, slack and findings. */
export function StepNotes({ row, outline }: StepNotesProps) {
  const { step } = row.entry;
  const { slack } = row;
  const waits = row.waits.map((wait) => inWords(waitMessage(outline, wait)));
  return (
    <ul className="read-notes">
      {step.when && (
        <li>
          {words("read/only-if", {
            branches: Object.entries(step.when)
              .map(
                ([decision, outcome]) => `${outline.decision(decision)?.decision.ask ?? decision} ${outcome}`,
              )
              .join(words("figures/between")),
          })}
        </li>
      )}
      {step.decide && (
        <li>
          {words("read/decision", {
            ask: step.decide.ask,
            outcomes: step.decide.outcomes,
            expected: step.decide.expect,
          })}
          <TextMark list="decisions" id={step.decide.id} field="ask" />
        </li>
      )}
      {step.needs && <li>{words("read/needs", { states: stateWords(outline, step.needs) })}</li>}
      {step.sets && <li>{words("read/sets", { states: stateWords(outline, step.sets) })}</li>}
      {step.notBefore !== undefined && <li>{words("read/not-before", { at: step.notBefore })}</li>}
      {step.doneBy !== undefined && <li>{words("read/done-by", { at: step.doneBy })}</li>}
      {step.check.length > 0 && (
        <li>
          {words("read/check", { entries: step.check })}
          <TextMark list="steps" id={step.id} field="check" />
        </li>
      )}
      {step.or.length > 0 && (
        <li>{words("read/or", { others: step.or.map(({ by }) => callsOf(outline, by)) })}</li>
      )}
      {step.refs.length > 0 && <li>{words("read/refs", { refs: step.refs })}</li>}
      {step.records.map((record) => (
        <li key={record.id}>
          {limitWords(record)
            ? words("read/record-within", {
                record: record.label ?? record.id,
                limits: limitWords(record),
              })
            : words("read/record", { record: record.label ?? record.id })}
          <TextMark list="steps" id={step.id} field="records" part={record.id} />
        </li>
      ))}
      {step.confirm && (
        <li>
          {words("read/confirms", {
            crew: callsOf(outline, [step.confirm.by]),
            text: step.confirm.text,
          })}
          <TextMark list="steps" id={step.id} field="confirm" />
        </li>
      )}
      {step.moves.map(({ item, to }) => (
        <li key={item}>
          {outline.item(item)?.label ?? item} → {locationWords(outline, to)}
        </li>
      ))}
      {step.within.length > 0 && (
        <li>
          {words("read/only-in", {
            windows: step.within.map((id) => windowLabel(outline, id)),
          })}
        </li>
      )}
      {step.after.map(({ step: id, lag, within }) => {
        const number = outline.step(id)?.number ?? id;
        return (
          <Fragment key={id}>
            <li>
              {lag > 0
                ? words("read/after-and", { step: number, lag })
                : words("read/after", { step: number })}
            </li>
            {within !== null && <li>{words("read/after-within", { step: number, within })}</li>}
          </Fragment>
        );
      })}
      {waits.map((wait) => (
        <li key={wait}>{wait}</li>
      ))}
      {slack && slack.slack > 0 && <li>{words("read/slack", { time: slack.slack })}</li>}
      {row.findings.map((one) => (
        <FindingItem key={`${one.code} ${one.pointer}`} finding={one} />
      ))}
    </ul>
  );
}
