import type { OutlineStep } from "../../core/procedure/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import { OutcomeChoice } from "./outcome-choice.tsx";

interface StepActsProps {
  readonly entry: OutlineStep;
  readonly state: WalkState;
  readonly actions: FollowActions;
  /** Whether this device leads, and so may say which of two contrary decisions holds. */
  readonly maySettle: boolean;
  /** The reason or note as typed so far. */
  readonly reason: string;
  readonly onReason: (reason: string) => void;
  readonly onClose: () => void;
}

/** The actions on one step that are rarely needed. Each of them closes the panel once its entry is kept. */
export function StepActs({ entry, state, actions, maySettle, reason, onReason, onClose }: StepActsProps) {
  const { step } = entry;
  const { ledger } = state;
  const isOpen = ledger.steps.get(step.id)?.status === "open";
  const isWorking = state.lanes.some(({ step: at, status }) => at === step.id && status === "working");
  const then = (action: Promise<void>) => {
    void action.then(onClose);
  };
  return (
    <>
      <label className="field">
        <span>{words("panel/reason-or-note")}</span>
        <textarea rows={2} value={reason} onChange={(event) => onReason(event.target.value)} />
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
            onClick={() => then(actions.skip(step.id, reason.trim()))}
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
            disabled={reason.trim() === ""}
            onClick={() =>
              then(
                actions.done(step.id, {
                  outOfOrder: true,
                  reason: reason.trim(),
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
          <OutcomeChoice
            decision={step.decide}
            ledger={ledger}
            onChoose={(decision, outcome) => then(actions.decide(decision, outcome))}
            onSettle={maySettle ? (decision, outcome) => then(actions.settle(decision, outcome)) : null}
          />
        )}
      </div>
      {isOpen && !entry.getAhead && <p className="hint">{words("panel/skip-needs-reason")}</p>}
      {isOpen && !isWorking && <p className="hint">{words("panel/order-needs-reason")}</p>}
    </>
  );
}
