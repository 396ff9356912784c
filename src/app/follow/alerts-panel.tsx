import { useState } from "react";
import { between } from "../../core/units/index.ts";
import type { WalkAlert, WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { AlertLine } from "./alert-line.tsx";
import { AlertMark } from "./alert-mark.tsx";
import type { FollowActions } from "./follow-actions.ts";
import { NamedContingencies } from "./named-contingencies.tsx";
import { chooseSignal, signalChoice } from "./signal-choice.ts";

/** What the list of alerts needs. */
export interface AlertsPanelProps {
  readonly alerts: readonly WalkAlert[];
  readonly state: WalkState;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** Opens the panel of a step. */
  readonly onPick: (step: string) => void;
  /** Opens a contingency beside the walk. */
  readonly onContingency: (contingency: string) => void;
  readonly onClose: () => void;
}

const LEVELS = ["act-now", "look-soon", "know"] as const;

/** All alerts that hold, which of them sound here, and those that were raised so far. */
export function AlertsPanel({ alerts, onContingency, onClose, ...line }: AlertsPanelProps) {
  const { ledger } = line.state;
  const { contingencies } = ledger.inForce.outline.procedure;
  const [sounds, setSounds] = useState(signalChoice);
  const petZero = ledger.petZero ?? ledger.opened.at;
  return (
    <SidePanel title={words("alert/alerts")} onClose={onClose}>
      {alerts.length === 0 && <p className="hint">{words("alert/none")}</p>}
      <ul className="plain-list">
        {alerts.map((alert) => (
          <AlertLine key={`${alert.alert} ${alert.level}`} alert={alert} {...line} />
        ))}
      </ul>
      {contingencies.length > 0 && (
        <>
          <h3>{words("panel/contingencies")}</h3>
          <p className="hint">{words("panel/contingencies-at-alert")}</p>
          <NamedContingencies contingencies={contingencies} onOpen={onContingency} />
        </>
      )}
      <fieldset className="choices">
        <legend>{words("alert/sounds")}</legend>
        {LEVELS.map((level) => (
          <label key={level} className="choice">
            <input
              type="checkbox"
              checked={sounds[level]}
              onChange={({ target }) => setSounds(chooseSignal(level, target.checked))}
            />
            <AlertMark level={level} />
          </label>
        ))}
      </fieldset>
      <h3>{words("alert/raised-so-far")}</h3>
      <ul className="plain-list">
        {ledger.alerts.raised.toReversed().map(({ alert, level, at }) => (
          <li key={`${alert} ${level}`}>
            {words("alert/raised-at", { at: between(petZero, at) })} <AlertMark level={level} /> {alert}
          </li>
        ))}
      </ul>
      <p className="hint">{words("alert/how")}</p>
    </SidePanel>
  );
}
