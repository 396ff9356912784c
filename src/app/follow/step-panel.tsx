import { useState } from "react";
import type { OutlineStep } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { skipReason } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
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
  const said = progress && inWords(skipReason(progress) || (progress.reopened.at(-1)?.reason ?? ""));
  const [reason, setReason] = useState("");
  const isOpen = progress?.status === "open";
  const isRunning = phase === "running" || phase === "held";
  const isWorking = state.lanes.some(({ step: at, status }) => at === step.id && status === "working");
  const calls = callsOf(outline, step.by);
  const then = (action: Promise<void>) => {
    void action.then(onClose);
  };
  return (
    <SidePanel title={words("panel/step", { number: entry.number, crew: calls })} onClose={onClose}>
      {step.alerts.map((alert) => (
        <AlertBox key={alert.text} alert={alert} />
      ))}
      <p className="open-do">{step.do}</p>
      <dl className="facts">
        {planned && <Fact name={words("panel/planned")}>{spanText(planned.start, planned.finish)}</Fact>}
        {progress?.finish != null && ledger.petZero !== null && (
          <Fact name={words(progress.status === "done" ? "panel/done" : "panel/skipped")}>
            {progress.completedBy?.actor
              ? words("panel/done-at-by", {
                  pet: between(ledger.petZero, progress.finish),
                  who: actorsText([progress.completedBy], outline.crew),
                })
              : clockText(between(ledger.petZero, progress.finish))}
            {progress.alsoDone.length > 0 &&
              ` · ${words("panel/confirmed-by", { who: actorsText(progress.alsoDone, outline.crew) })}`}
            {said && ` · ${said}`}
          </Fact>
        )}
        {step.after.length > 0 && (
          <Fact name={words("panel/after")}>
            {step.after
              .map(({ step: id, lag }) => afterWords(outline.step(id)?.number ?? id, lag))
              .join(", ")}
          </Fact>
        )}
        {step.within.length > 0 && (
          <Fact name={words("panel/only-in")}>
            {words("panel/windows", {
              windows: step.within.map(
                (id) => outline.procedure.windows.find((window) => window.id === id)?.label ?? id,
              ),
            })}
          </Fact>
        )}
        {step.moves.map(({ item, to }) => (
          <Fact key={item} name={words("panel/moves")}>
            {outline.item(item)?.label ?? item} → {locationWords(outline, to)}
          </Fact>
        ))}
        {step.anchor !== undefined && (
          <Fact name={words("panel/tether-to")}>{outline.place(step.anchor)?.label ?? step.anchor}</Fact>
        )}
        {step.records.map((record) => (
          <Fact key={record.id} name={record.label ?? record.id}>
            {progress?.records
              .filter(({ record: of }) => of === record.id)
              .map(({ value, outOfRange }) =>
                words(outOfRange ? "panel/outside-limits" : "panel/value", { value }),
              )
              .join(", ") || words("panel/not-recorded")}
            {limitWords(record) && ` · ${words("panel/allowed", { limits: limitWords(record) })}`}
          </Fact>
        ))}
        {step.confirm && (
          <Fact name={words("panel/confirms", { crew: callsOf(outline, [step.confirm.by]) })}>
            {step.confirm.text} · {words(progress?.confirmed ? "panel/confirmed" : "panel/not-yet")}
          </Fact>
        )}
      </dl>
      {isRunning && actions && (
        <>
          <label className="field">
            <span>{words("panel/reason-or-note")}</span>
            <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
          </label>
          <div className="panel-acts">
            <button
              type="button"
              className="plain-button"
              disabled={reason.trim() === ""}
              onClick={() => then(actions.note(reason.trim(), step.id))}
            >
              {words("panel/keep-as-note")}
            </button>
            {isOpen && (
              <button
                type="button"
                className="plain-button"
                disabled={reason.trim() === "" && !entry.getAhead}
                onClick={() =>
                  then(actions.skip(step.id, reason.trim(), words("entered/skipped", { step: step.do })))
                }
              >
                {words("panel/skip")}
              </button>
            )}
            {isOpen && isWorking && (
              <button type="button" className="plain-button" onClick={() => then(actions.started(step.id))}>
                {words("panel/starts-only-now")}
              </button>
            )}
            {isOpen && !isWorking && (
              <button
                type="button"
                className="plain-button"
                onClick={() =>
                  then(
                    actions.done(step.id, words("entered/out-of-order", { step: step.do }), {
                      outOfOrder: true,
                    }),
                  )
                }
              >
                {words("panel/done-out-of-order")}
              </button>
            )}
            {!isOpen && (
              <button
                type="button"
                className="plain-button"
                disabled={reason.trim() === ""}
                onClick={() => then(actions.reopen(step.id, reason.trim()))}
              >
                {words("panel/open-again")}
              </button>
            )}
            {step.decide && (ledger.outcomes.has(step.decide.id) || !isOpen) && (
              <fieldset className="panel-outcomes">
                <legend>
                  {ledger.outcomes.has(step.decide.id)
                    ? words("panel/came-out", { outcome: String(ledger.outcomes.get(step.decide.id)) })
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
          {isOpen && !entry.getAhead && <p className="hint">{words("panel/skip-needs-reason")}</p>}
        </>
      )}
    </SidePanel>
  );
}

const afterWords = (step: string, lag: Duration) =>
  lag > 0 ? words("panel/after-lag", { step, lag: Math.round(lag / 60_000) }) : step;
