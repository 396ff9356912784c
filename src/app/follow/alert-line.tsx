import type { ReactNode } from "react";
import type { Outline } from "../../core/procedure/index.ts";
import type { WalkAlert, WalkState } from "../../core/walk/index.ts";
import { watchStates } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { actorsText } from "./actors-text.ts";
import { AlertMark } from "./alert-mark.tsx";
import type { FollowActions } from "./follow-actions.ts";
import { GuardedButton } from "./guarded-button.tsx";

interface AlertLineProps {
  readonly alert: WalkAlert;
  readonly state: WalkState;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** Opens the panel of a step. */
  readonly onPick: (step: string) => void;
  /** A further button at the end. */
  readonly children?: ReactNode;
}

/** One alert: its level, what it is about, since when, who has seen it, and what can be done about it here. */
export function AlertLine({ alert, state, actions, onPick, children }: AlertLineProps) {
  const { level, since, step, text, seen } = alert;
  const { outline } = state.ledger.inForce;
  return (
    <li className="alert-line" data-level={level}>
      <p className="alert-text">
        <AlertMark level={level} /> {inWords(text)}.{" "}
        <span className="alert-since">
          {words("alert/since", { since })}
          {seen && ` ${words("alert/seen-by", { who: actorsText([seen], outline.crew) })}`}
        </span>
      </p>
      <span className="alert-acts">
        {step !== null && (
          <button type="button" className="plain-button" onClick={() => onPick(step)}>
            {words("alert/step", { number: numberOf(outline, step) })}
          </button>
        )}
        {actions && <KeepWatch alert={alert} state={state} actions={actions} />}
        {actions && !seen && (
          <GuardedButton onTap={() => void actions.seeAlert(alert.alert, level)}>
            {words("alert/seen")}
          </GuardedButton>
        )}
        {children}
      </span>
    </li>
  );
}

const numberOf = (outline: Outline, step: string) => outline.step(step)?.number ?? step;

/** The button that notes a watch that is due; nothing for any other alert. */
function KeepWatch({
  alert: { about },
  state,
  actions,
}: {
  readonly alert: WalkAlert;
  readonly state: WalkState;
  readonly actions: FollowActions;
}) {
  const open = watchStates(state).find(({ watch, isOpen }) => isOpen && watch.id === about);
  if (!open || open.due === null) return null;
  const { due, watch } = open;
  return (
    <GuardedButton onTap={() => void actions.keepWatch(watch.id, due)}>
      {words("follow/note-it-done")}
    </GuardedButton>
  );
}
