import { useState } from "react";
import { crewHolding } from "../../core/custody/index.ts";
import type { Location } from "../../core/procedure/index.ts";
import type { ItemId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { locationWords } from "../parts/index.ts";
import { StatesSection } from "./states-section.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** The key of a location in a list of choices. */
function keyOfLocation(location: Location): string {
  if ("place" in location) return ["place", location.place].join(" ");
  if ("item" in location) return ["item", location.item].join(" ");
  return ["crew", ...crewHolding(location).toSorted()].join(" ");
}

/** Where every item is, with a way to enter that one is elsewhere. */
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
      <SidePanel title={words("panel/items")} onClose={onClose}>
        <p className="hint">{words("panel/no-items")}</p>
        <StatesSection state={state} actions={actions} />
      </SidePanel>
    );
  }
  const astray = items.filter(
    ({ id, end }) => end && keyOfLocation(end) !== keyOfLocation(ledger.custody.get(id) ?? end),
  );
  return (
    <SidePanel title={words("panel/items")} onClose={onClose}>
      <p className="hint">
        {words("panel/items-at-end", { all: items.length, right: items.length - astray.length })}
      </p>
      <table className="plain-table">
        <thead>
          <tr>
            <th scope="col">{words("panel/item")}</th>
            <th scope="col">{words("panel/item-now")}</th>
            <th scope="col">{words("panel/item-at-end")}</th>
          </tr>
        </thead>
        <tbody>
          {items.map(({ id, label, end }) => (
            <tr key={id}>
              <th scope="row">{label ?? id}</th>
              <td>{locationWords(outline, ledger.custody.get(id))}</td>
              <td>{end ? locationWords(outline, end) : words("panel/item-inside")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{words("panel/elsewhere")}</h3>
      <label className="field">
        <span>{words("panel/item")}</span>
        <select value={item} onChange={(event) => setItem(event.target.value as ItemId)}>
          <option value="">{words("panel/choose-item")}</option>
          {items.map(({ id, label }) => (
            <option key={id} value={id}>
              {label ?? id}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{words("panel/is-now")}</span>
        <select value={to} onChange={(event) => setTo(event.target.value)}>
          <option value="">{words("panel/choose-where")}</option>
          {locations.map((location) => (
            <option key={keyOfLocation(location)} value={keyOfLocation(location)}>
              {locationWords(outline, location)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{words("panel/why")}</span>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={item === "" || !chosen}
          onClick={() => void move()}
        >
          {words("panel/enter-move")}
        </button>
      </div>
    </SidePanel>
  );
}
