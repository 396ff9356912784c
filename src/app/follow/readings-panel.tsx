import { useState } from "react";
import type { SupplyForecast } from "../../core/supply/index.ts";
import { between } from "../../core/units/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { unitText } from "../parts/index.ts";
import { SidePanel } from "./side-panel.tsx";
import { TurnBackWords } from "./turn-back-words.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** The last reading of every supply with its age, and a field for adding one. */
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
    <SidePanel title={words("panel/readings")} onClose={onClose}>
      {supplies.length === 0 && <p className="hint">{words("panel/no-supplies")}</p>}
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
                <b>{outline.crewMember(crew)?.call}</b> {label ?? id},{" "}
                {unitText(unit) || words("panel/share")}
              </span>
              <input
                inputMode="decimal"
                value={text}
                placeholder={last ? String(last.value) : ""}
                onChange={(event) => setTexts({ ...texts, [key]: event.target.value })}
              />
            </label>
            <button type="button" className="plain-button" disabled={!isValue} onClick={() => void enter()}>
              {words("panel/enter")}
            </button>
            <p className="hint">
              {last
                ? words("panel/read-ago", { value: last.value, ago: between(last.at, now), full, redline })
                : words("panel/no-reading", { full, redline })}
              {state.pet !== null && ` · ${headingWords(forecasts.get(key))}`}
            </p>
          </div>
        );
      })}
      {state.pet !== null && <TurnBackWords state={state} turn={turn} />}
      <p className="hint">{words("panel/redlines-how")} </p>
    </SidePanel>
  );
}

/** Where a supply is heading, and on what basis. */
function headingWords(forecast: SupplyForecast | undefined): string {
  if (!forecast) return words("panel/no-forecast");
  const { redlineAt: at, fitted: count } = forecast;
  if (forecast.basis === "fit")
    return at === null
      ? words("panel/no-redline-fitted", { count })
      : words("panel/redline-fitted", { at, count });
  return at === null ? words("panel/no-redline-planned") : words("panel/redline-planned", { at });
}
