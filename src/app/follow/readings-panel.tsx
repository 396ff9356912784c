import { useState } from "react";
import type { SupplyForecast } from "../../core/supply/index.ts";
import { between, hourMinuteText, lengthText } from "../../core/units/index.ts";
import type { TurnBackState, WalkState } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { unitText } from "../parts/index.ts";
import { SidePanel } from "./side-panel.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** The last reading of every supply with its age, and a new one. */
export function ReadingsPanel({ state, now, actions, onClose }: WalkPanelProps) {
  const { ledger } = state;
  const { outline } = ledger.inForce;
  const { supplies } = outline.procedure;
  const turn = turnBackState(state);
  const forecasts = new Map(
    turn.supplies.map(({ supply, forecast }) => [`${supply.crew} ${supply.id}`, forecast]),
  );
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  return (
    <SidePanel title="Suit readings" onClose={onClose}>
      {supplies.length === 0 && <p className="hint">This procedure lists no supplies.</p>}
      {supplies.map(({ crew, id, label, unit, redline, full }) => {
        const key = `${crew} ${id}`;
        const last = ledger.readings
          .toArray()
          .findLast((reading) => reading.crew === crew && reading.supply === id);
        const text = texts[key] ?? "";
        const value = Number(text.replace(",", "."));
        const isValue = text.trim() !== "" && Number.isFinite(value);
        const enter = async () => {
          await actions.readSupply(crew, id, value);
          setTexts({ ...texts, [key]: "" });
        };
        return (
          <div key={key} className="reading">
            <label className="field">
              <span>
                <b>{outline.crewMember(crew)?.call}</b> {label ?? id}, {unitText(unit) || "share"}
              </span>
              <input
                inputMode="decimal"
                value={text}
                placeholder={last ? String(last.value) : ""}
                onChange={(event) => setTexts({ ...texts, [key]: event.target.value })}
              />
            </label>
            <button type="button" className="plain-button" disabled={!isValue} onClick={() => void enter()}>
              Enter
            </button>
            <p className="hint">
              {last ? `${last.value} read ${lengthText(between(last.at, now))} ago` : "no reading yet"} · full{" "}
              {full}, redline {redline}
              {state.pet !== null && ` · ${headingWords(forecasts.get(key))}`}
            </p>
          </div>
        );
      })}
      {state.pet !== null && <TurnBackWords state={state} turn={turn} />}
      <p className="hint">
        Redlines and what to do at them are in the flight rules; these figures come from the procedure.
      </p>
    </SidePanel>
  );
}

/** Where a supply is heading, and by what. */
function headingWords(forecast: SupplyForecast | undefined): string {
  if (!forecast) return "no forecast";
  const by = forecast.basis === "fit" ? `by the last ${forecast.fitted} readings` : "by the planned rate";
  const at =
    forecast.redlineAt === null ? "no redline ahead" : `redline at PET ${hourMinuteText(forecast.redlineAt)}`;
  return `${at}, ${by}`;
}

/** What sets the turn-back time, and what it is made of. */
function TurnBackWords({ state, turn }: { readonly state: WalkState; readonly turn: TurnBackState }) {
  const { outline } = state.ledger.inForce;
  const { turnBack, limiting, longestReturn } = turn;
  if (!turnBack || !longestReturn) return null;
  const call = outline.crewMember(longestReturn.crew)?.call;
  const because =
    turnBack.because === "limit"
      ? "the elapsed limit"
      : `${limiting && outline.crewMember(limiting.supply.crew)?.call} ${limiting?.supply.label ?? limiting?.supply.id}`;
  return (
    <p>
      Turn back by PET <b>{hourMinuteText(turnBack.at)}</b>: set by {because}; {call} needs{" "}
      {lengthText(longestReturn.way)} from {outline.place(longestReturn.from)?.label ?? longestReturn.from}{" "}
      and {lengthText(longestReturn.closeout)} of closeout.
    </p>
  );
}
