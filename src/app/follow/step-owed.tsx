import type { OutlineStep } from "../../core/procedure/index.ts";
import type { Outstanding, WalkState } from "../../core/walk/index.ts";
import { outstandingOf, progressOf } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { CheckList } from "./check-list.tsx";
import type { FollowActions } from "./follow-actions.ts";
import { GuardedButton } from "./guarded-button.tsx";
import { RecordField } from "./record-field.tsx";

interface StepOwedProps {
  readonly entry: OutlineStep;
  readonly state: WalkState;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
}

/** What a step owes ([OFF2]), with the field or button that makes it good. Nothing is drawn when it owes nothing. */
export function StepOwed({ entry, state, actions }: StepOwedProps) {
  const { step } = entry;
  const owed = outstandingOf(state).filter((one) => one.step === step.id);
  if (owed.length === 0) return null;
  return (
    <section className="step-owed" aria-label={words("panel/outstanding")}>
      <h3>{words("panel/outstanding")}</h3>
      <ul className="plain-list">
        {owed.map((one) => (
          <li key={`${one.kind} ${one.record}`} className="outstanding">
            <p>{inWords(one.text)}</p>
            {actions && <MakeGood one={one} entry={entry} state={state} actions={actions} />}
          </li>
        ))}
      </ul>
    </section>
  );
}

function MakeGood({
  one,
  entry: { step },
  state: { ledger },
  actions,
}: {
  readonly one: Outstanding;
  readonly entry: OutlineStep;
  readonly state: WalkState;
  readonly actions: FollowActions;
}) {
  const record = step.records.find(({ id }) => id === one.record);
  if (record)
    return (
      <RecordField
        step={step.id}
        record={record}
        taken={progressOf(ledger, step.id).records}
        actions={actions}
      />
    );
  if (one.kind === "confirmation-not-given")
    return (
      <GuardedButton onTap={() => void actions.confirm(step.id)}>{words("follow/confirm")}</GuardedButton>
    );
  if (one.kind === "check-not-counted")
    return <CheckList step={step} progress={progressOf(ledger, step.id)} actions={actions} />;
  return one.kind === "reason-not-given" ? <p className="hint">{words("panel/reason-as-note")}</p> : null;
}
