import { useState } from "react";
import type { Entry } from "../../core/log/index.ts";
import { keyOf } from "../../core/log/index.ts";
import type { Supply } from "../../core/procedure/index.ts";
import type { SupplyForecast } from "../../core/supply/index.ts";
import { impossibleReading } from "../../core/supply/index.ts";
import { between } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { inWords, unitText, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { TurnBackWords } from "./turn-back-words.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

interface ReadingsPanelProps extends WalkPanelProps {
  readonly folded: Folded;
}

/** How many of the last readings of a supply are listed, each with the way to strike it. */
const LISTED = 3;

/** The last readings of every supply with their age, and a field for adding one. */
export function ReadingsPanel({ state, now, actions, folded, onClose }: ReadingsPanelProps) {
  const { outline } = state.ledger.inForce;
  const { supplies } = outline.procedure;
  const turn = turnBackState(state);
  return (
    <SidePanel title={words("panel/readings")} onClose={onClose}>
      {supplies.length === 0 && <p className="hint">{words("panel/no-supplies")}</p>}
      {supplies.map((supply) => (
        <SupplyReadings
          key={`${supply.crew} ${supply.id}`}
          supply={supply}
          call={outline.crewMember(supply.crew)?.call ?? supply.crew}
          forecast={
            state.pet === null
              ? null
              : (turn.supplies.find(({ supply: one }) => one === supply)?.forecast ?? null)
          }
          readings={readingsOf(folded, supply)}
          now={now}
          actions={actions}
        />
      ))}
      {state.pet !== null && <TurnBackWords state={state} turn={turn} />}
      <p className="hint">{words("panel/redlines-how")} </p>
    </SidePanel>
  );
}

/** A reading with the entry that told it. */
interface EnteredReading {
  readonly entry: Entry;
  readonly value: number;
}

/** The readings of a supply that were entered as such and are not struck, the newest first. */
function readingsOf({ entries, struck }: Folded, { crew, id }: Supply): readonly EnteredReading[] {
  return entries
    .flatMap((entry): EnteredReading[] => {
      const { fact } = entry.read;
      return fact?.name === "supply.read" &&
        fact.crew === crew &&
        fact.supply === id &&
        !struck.has(keyOf(entry))
        ? [{ entry, value: fact.value }]
        : [];
    })
    .reverse();
}

interface SupplyReadingsProps extends Pick<WalkPanelProps, "now" | "actions"> {
  readonly supply: Supply;
  readonly call: string;
  readonly forecast: SupplyForecast | null;
  readonly readings: readonly EnteredReading[];
}

function SupplyReadings({ supply, call, forecast, readings, now, actions }: SupplyReadingsProps) {
  const { crew, id, label = id, unit, full, redline } = supply;
  const [text, setText] = useState("");
  const value = Number(text.replace(",", "."));
  const isValue = text.trim() !== "" && Number.isFinite(value);
  const doubt = isValue ? impossibleReading(supply, value) : null;
  const last = readings[0];
  const enter = async () => {
    await actions.readSupply(crew, id, value);
    setText("");
  };
  return (
    <div className="reading">
      <label className="field">
        <span>
          <b>{call}</b> <bdi>{label}</bdi>
          {words("figures/between")}
          <bdi>{unitText(unit) || words("panel/share")}</bdi>
        </span>
        <input
          inputMode="decimal"
          value={text}
          placeholder={last ? String(last.value) : ""}
          aria-invalid={doubt !== null || undefined}
          onChange={(event) => setText(event.target.value)}
        />
      </label>
      <button type="button" className="plain-button" disabled={!isValue} onClick={() => void enter()}>
        {words(doubt === null ? "panel/enter" : "panel/enter-anyway")}
      </button>
      {doubt !== null && (
        <p className="record-outside" role="alert">
          {words("panel/reading-doubtful", { why: inWords(doubt) })}
        </p>
      )}
      <p className="hint">
        {words(last ? "panel/full-and-redline" : "panel/no-reading", {
          full: { value: full, unit },
          redline: { value: redline, unit, limit: "min" },
        })}
        {forecast !== null && ` · ${headingWords(forecast)}`}
      </p>
      <ul className="plain-list">
        {readings.slice(0, LISTED).map(({ entry, value: read }) => (
          <li key={`${entry.wire.source} ${entry.wire.id}`} className="outstanding">
            <span>
              {words("panel/read-ago", { value: { value: read, unit }, ago: between(entry.at, now) })}
            </span>
            <button type="button" className="plain-button" onClick={() => void actions.undo([entry])}>
              {words("panel/strike-reading")}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Where a supply is heading, and on what basis. */
function headingWords({ basis, redlineAt: at, fitted: count }: SupplyForecast): string {
  if (basis === "fit")
    return at === null
      ? words("panel/no-redline-fitted", { count })
      : words("panel/redline-fitted", { at, count });
  return at === null ? words("panel/no-redline-planned") : words("panel/redline-planned", { at });
}
