import { useState } from "react";
import type { OutlineStep } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { skipReason } from "../../core/walk/index.ts";
import { AlertBox, callsOf, Fact, limitWords, locationWords, spanText } from "../parts/index.ts";
import { actorsText } from "./actors-text.ts";
import type { FollowActions } from "./follow-actions.ts";
import { SidePanel } from "./side-panel.tsx";

interface StepPanelProps {
  readonly entry: OutlineStep;
  readonly state: WalkState;
  /** `null` for whoever only reads. */
  readonly actions: FollowActions | null;
  readonly onClose: () => void;
}

/** Everything about one step, and what is rarely needed: skip, out of order, start now, open again, a note. */
export function StepPanel({ entry, state, actions, onClose }: StepPanelProps) {
  const { step } = entry;
  const { ledger, plan, phase } = state;
  const { outline } = ledger.inForce;
  const progress = ledger.steps.get(step.id);
  const planned = plan.timeline?.course.steps.get(step.id);
  const said = progress && (skipReason(progress) || progress.reopened.at(-1)?.reason);
  const [reason, setReason] = useState("");
  const isOpen = progress?.status === "open";
  const isRunning = phase === "running" || phase === "held";
  const isWorking = state.lanes.some(({ step: at, status }) => at === step.id && status === "working");
  const calls = callsOf(outline, step.by);
  const then = (action: Promise<void>) => {
    void action.then(onClose);
  };
  return (
    <SidePanel title={`Step ${entry.number} · ${calls}`} onClose={onClose}>
      {step.alerts.map((alert) => (
        <AlertBox key={alert.text} alert={alert} />
      ))}
      <p className="open-do">{step.do}</p>
      <dl className="facts">
        {planned && <Fact name="Planned">{spanText(planned.start, planned.finish)}</Fact>}
        {progress?.finish != null && ledger.petZero !== null && (
          <Fact name={progress.status === "done" ? "Done" : "Skipped"}>
            {clockText(between(ledger.petZero, progress.finish))}
            {progress.completedBy?.actor && ` by ${actorsText([progress.completedBy], outline.crew)}`}
            {progress.alsoDone.length > 0 && ` · confirmed by ${actorsText(progress.alsoDone, outline.crew)}`}
            {said && ` · ${said}`}
          </Fact>
        )}
        {step.after.length > 0 && (
          <Fact name="After">
            {step.after
              .map(({ step: id, lag }) => `${outline.step(id)?.number ?? id}${lagWords(lag)}`)
              .join(", ")}
          </Fact>
        )}
        {step.within.length > 0 && (
          <Fact name="Only in">
            {step.within
              .map((id) => outline.procedure.windows.find((window) => window.id === id)?.label ?? id)
              .join(" and ")}
          </Fact>
        )}
        {step.moves.map(({ item, to }) => (
          <Fact key={item} name="Moves">
            {outline.item(item)?.label ?? item} → {locationWords(outline, to)}
          </Fact>
        ))}
        {step.anchor !== undefined && (
          <Fact name="Tether to">{outline.place(step.anchor)?.label ?? step.anchor}</Fact>
        )}
        {step.records.map((record) => (
          <Fact key={record.id} name={record.label ?? record.id}>
            {progress?.records
              .filter(({ record: of }) => of === record.id)
              .map(({ value, outOfRange }) => `${value}${outOfRange ? " (outside limits)" : ""}`)
              .join(", ") || "not recorded"}
            {limitWords(record) && ` · allowed ${limitWords(record)}`}
          </Fact>
        ))}
        {step.confirm && (
          <Fact name={`${callsOf(outline, [step.confirm.by])} confirms`}>
            {step.confirm.text} · {progress?.confirmed ? "confirmed" : "not yet"}
          </Fact>
        )}
      </dl>
      {isRunning && actions && (
        <>
          <label className="field">
            <span>Reason or note</span>
            <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
          </label>
          <div className="panel-acts">
            <button
              type="button"
              className="plain-button"
              disabled={reason.trim() === ""}
              onClick={() => then(actions.note(reason.trim(), step.id))}
            >
              Keep as a note
            </button>
            {isOpen && (
              <button
                type="button"
                className="plain-button"
                disabled={reason.trim() === "" && !entry.getAhead}
                onClick={() => then(actions.skip(step.id, reason.trim(), `Skipped: ${step.do}`))}
              >
                Skip this step
              </button>
            )}
            {isOpen && isWorking && (
              <button type="button" className="plain-button" onClick={() => then(actions.started(step.id))}>
                It starts only now
              </button>
            )}
            {isOpen && !isWorking && (
              <button
                type="button"
                className="plain-button"
                onClick={() => then(actions.done(step.id, `Out of order: ${step.do}`, { outOfOrder: true }))}
              >
                Done out of order
              </button>
            )}
            {!isOpen && (
              <button
                type="button"
                className="plain-button"
                disabled={reason.trim() === ""}
                onClick={() => then(actions.reopen(step.id, reason.trim()))}
              >
                Open it again
              </button>
            )}
            {step.decide && (ledger.outcomes.has(step.decide.id) || !isOpen) && (
              <fieldset className="panel-outcomes">
                <legend>
                  {ledger.outcomes.has(step.decide.id)
                    ? `It came out ${ledger.outcomes.get(step.decide.id)}. Change it to:`
                    : step.decide.ask}
                </legend>
                {step.decide.outcomes
                  .filter((outcome) => outcome !== ledger.outcomes.get(step.decide?.id as never))
                  .map((outcome) => (
                    <button
                      key={outcome}
                      type="button"
                      className="plain-button"
                      onClick={() => step.decide && then(actions.decide(step.decide.id, outcome))}
                    >
                      {outcome.replaceAll("-", " ")}
                    </button>
                  ))}
              </fieldset>
            )}
          </div>
          {isOpen && !entry.getAhead && (
            <p className="hint">A skip needs its reason; it stands in the review as a deviation.</p>
          )}
        </>
      )}
    </SidePanel>
  );
}

const lagWords = (lag: Duration) => (lag > 0 ? ` and ${Math.round(lag / 60_000)} min` : "");
