import type { Outstanding, WalkState } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import { GuardedButton } from "./guarded-button.tsx";

interface OutstandingPanelProps {
  readonly state: WalkState;
  readonly outstanding: readonly Outstanding[];
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** Opens the panel of a step, where it is made good. */
  readonly onPick: (step: string) => void;
  readonly onClose: () => void;
}

/** Everything that is outstanding ([OFF2]), the oldest first, each one tap from where it is made good. */
export function OutstandingPanel({ state, outstanding, actions, onPick, onClose }: OutstandingPanelProps) {
  const { outline } = state.ledger.inForce;
  return (
    <SidePanel title={words("panel/outstanding")} onClose={onClose}>
      {outstanding.length === 0 && <p className="hint">{words("panel/nothing-outstanding")}</p>}
      <ul className="plain-list">
        {outstanding.map(({ kind, step, record, watch, since, until, text }) => {
          const entry = step === null ? null : outline.step(step);
          return (
            <li key={`${kind} ${step} ${record} ${watch}`} className="outstanding">
              <p>
                <b>{inWords(text)}</b>
                <br />
                {entry &&
                  `${words("panel/outstanding-step", { number: entry.number, step: entry.step.do })} `}
                {until === null
                  ? words("panel/outstanding-since", { since })
                  : words("panel/outstanding-until", { since, until })}
              </p>
              {entry && (
                <button type="button" className="plain-button" onClick={() => onPick(entry.step.id)}>
                  {words("panel/outstanding-open")}
                </button>
              )}
              {watch !== null && actions && (
                <GuardedButton onTap={() => void actions.keepWatch(watch, since)}>
                  {words("follow/note-it-done")}
                </GuardedButton>
              )}
            </li>
          );
        })}
      </ul>
      <p className="hint">{words("panel/outstanding-how")}</p>
    </SidePanel>
  );
}
