import { useState } from "react";
import type { Location } from "../../core/procedure/index.ts";
import type { ItemId } from "../../core/units/index.ts";
import { locationWords } from "../parts/index.ts";
import { SidePanel } from "./side-panel.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

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
  const { outline } = ledger.inForce;
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
