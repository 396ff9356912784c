import { useState } from "react";
import type { Location } from "../../core/procedure/index.ts";
import type { SupplyForecast } from "../../core/supply/index.ts";
import type { Instant, ItemId } from "../../core/units/index.ts";
import { between, clockText, hourMinuteText, lengthText } from "../../core/units/index.ts";
import type { TurnBackState, WalkState } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { locationWords, unitText } from "../parts/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import { SidePanel } from "./side-panel.tsx";

interface WalkPanelProps {
  readonly state: WalkState;
  readonly now: Instant;
  readonly actions: FollowActions;
  readonly onClose: () => void;
}

/** The notes of the walk, and a new one. */
export function NotesPanel({ state, actions, onClose }: WalkPanelProps) {
  const [text, setText] = useState("");
  const { ledger } = state;
  const keep = async () => {
    await actions.note(text.trim(), null);
    setText("");
  };
  return (
    <SidePanel title="Notes" onClose={onClose}>
      <label className="field">
        <span>A note on the walk</span>
        <textarea rows={3} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={text.trim() === ""}
          onClick={() => void keep()}
        >
          Keep the note
        </button>
      </div>
      {ledger.notes.length === 0 ? (
        <p className="hint">No notes yet. A note on one step is made at the step.</p>
      ) : (
        <ul className="plain-list">
          {ledger.notes.toReversed().map((note) => (
            <li key={`${note.at} ${note.text}`}>
              <b>
                {ledger.petZero === null ? "before the start" : clockText(between(ledger.petZero, note.at))}
              </b>{" "}
              {note.step !== null && `step ${ledger.opened.outline.step(note.step)?.number}: `}
              {note.text}
            </li>
          ))}
        </ul>
      )}
    </SidePanel>
  );
}

/** A text that names a location, for a list of choices. */
const keyOfLocation = (location: Location): string =>
  "crew" in location
    ? `crew ${location.crew}`
    : "place" in location
      ? `place ${location.place}`
      : `item ${location.item}`;

/** Where every item is, and a way to say that one is elsewhere. */
export function ItemsPanel({ state, actions, onClose }: WalkPanelProps) {
  const { ledger } = state;
  const { outline } = ledger.opened;
  const { items, crew, places } = outline.procedure;
  const [item, setItem] = useState<ItemId | "">("");
  const [to, setTo] = useState("");
  const [reason, setReason] = useState("");
  const locations: Location[] = [
    ...crew.filter(({ station }) => station !== "ground").map(({ id }) => ({ crew: id })),
    ...places.map(({ id }) => ({ place: id })),
    ...items.filter(({ id }) => id !== item).map(({ id }) => ({ item: id })),
  ];
  const chosen = locations.find((location) => keyOfLocation(location) === to);
  const move = async () => {
    if (item === "" || !chosen) return;
    await actions.moveItem(item, chosen, reason.trim());
    setItem("");
    setTo("");
    setReason("");
  };
  if (items.length === 0) {
    return (
      <SidePanel title="Items" onClose={onClose}>
        <p className="hint">This procedure lists no items.</p>
      </SidePanel>
    );
  }
  const astray = items.filter(
    ({ id, end }) => end && keyOfLocation(end) !== keyOfLocation(ledger.custody.get(id) ?? end),
  );
  return (
    <SidePanel title="Items" onClose={onClose}>
      <p className="hint">
        {items.length} items, {items.length - astray.length} where they must be at the end. Steps move items
        when they are done.
      </p>
      <table className="plain-table">
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Now</th>
            <th scope="col">At the end</th>
          </tr>
        </thead>
        <tbody>
          {items.map(({ id, label, end }) => (
            <tr key={id}>
              <th scope="row">{label ?? id}</th>
              <td>{locationWords(outline, ledger.custody.get(id))}</td>
              <td>{end ? locationWords(outline, end) : "inside"}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>It is elsewhere</h3>
      <label className="field">
        <span>Item</span>
        <select value={item} onChange={(event) => setItem(event.target.value as ItemId)}>
          <option value="">Choose an item</option>
          {items.map(({ id, label }) => (
            <option key={id} value={id}>
              {label ?? id}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>Is now</span>
        <select value={to} onChange={(event) => setTo(event.target.value)}>
          <option value="">Choose where</option>
          {locations.map((location) => (
            <option key={keyOfLocation(location)} value={keyOfLocation(location)}>
              {locationWords(outline, location)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>Why</span>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={item === "" || !chosen}
          onClick={() => void move()}
        >
          Enter the move
        </button>
      </div>
    </SidePanel>
  );
}

/** The last reading of every supply with its age, and a new one. */
export function ReadingsPanel({ state, now, actions, onClose }: WalkPanelProps) {
  const { ledger } = state;
  const { outline } = ledger.opened;
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
        const last = ledger.readings.findLast((reading) => reading.crew === crew && reading.supply === id);
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
  const { outline } = state.ledger.opened;
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

const ENDS = [
  { end: "complete", title: "Complete", words: "Everything that had to be done is done." },
  {
    end: "terminated",
    title: "Terminated",
    words: "Work was stopped, made safe, and the crew came back in order.",
  },
  { end: "aborted", title: "Aborted", words: "The crew came back at once by the shortest way." },
] as const;

/** Asks how the walk ended, and then once more before it is closed. */
export function ClosePanel({
  state,
  actions,
  onClose,
  onClosed,
}: WalkPanelProps & { readonly onClosed: () => void }) {
  const [end, setEnd] = useState<(typeof ENDS)[number]["end"] | null>(null);
  const [reason, setReason] = useState("");
  const left = state.lanes.filter(({ status }) => status !== "finished").length;
  const close = async () => {
    if (end === null) return;
    await actions.close(end, reason.trim());
    onClosed();
  };
  return (
    <SidePanel title="How did the walk end?" onClose={onClose}>
      {left > 0 && (
        <p className="hint">
          {left === 1 ? "One lane still has" : `${left} lanes still have`} steps that are not complete.
        </p>
      )}
      <fieldset className="choices">
        <legend className="heard-only">How the walk ended</legend>
        {ENDS.map((choice) => (
          <label key={choice.end} className="choice">
            <input type="radio" name="end" checked={end === choice.end} onChange={() => setEnd(choice.end)} />
            <span>
              <b>{choice.title}</b> {choice.words}
            </span>
          </label>
        ))}
      </fieldset>
      <label className="field">
        <span>Reason or remark</span>
        <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button type="button" className="done-button" disabled={end === null} onClick={() => void close()}>
          <span className="done-word">{end === null ? "Choose how it ended" : `Close the walk: ${end}`}</span>
        </button>
      </div>
    </SidePanel>
  );
}

/** Calls a hold: the whole walk stops, the clock runs on. */
export function HoldPanel({ actions, onClose }: WalkPanelProps) {
  const [reason, setReason] = useState("");
  return (
    <SidePanel title="Call a hold" onClose={onClose}>
      <p className="hint">The whole walk stops where it is; the clock runs on.</p>
      <label className="field">
        <span>Reason (may be left out)</span>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="done-button"
          onClick={() => void actions.hold(reason.trim()).then(onClose)}
        >
          <span className="done-word">Hold</span>
        </button>
      </div>
    </SidePanel>
  );
}
