import { useState } from "react";
import { stateLabel, valueLabel } from "../../core/procedure/index.ts";
import type { StateId } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { stateValuesOf } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { Fact } from "../parts/index.ts";
import type { FollowActions } from "./follow-actions.ts";

/** The states of the worksite as the steps and entries leave them, and a form for one that was found otherwise. */
export function StatesSection({
  state,
  actions,
}: {
  readonly state: WalkState;
  readonly actions: FollowActions;
}) {
  const { ledger } = state;
  const { outline } = ledger.inForce;
  const { states, crew } = outline.procedure;
  const [chosen, setChosen] = useState("");
  const [value, setValue] = useState("");
  const [reason, setReason] = useState("");
  if (states.length === 0) return null;
  const values = stateValuesOf(ledger);
  const of = states.find(({ id }) => id === chosen);
  const choices =
    of === undefined ? [] : of.values === "crew" ? ["free", ...crew.map(({ id }) => id)] : of.values;
  const enter = async () => {
    await actions.setState(chosen as StateId, value, reason.trim());
    setChosen("");
    setValue("");
    setReason("");
  };
  return (
    <section>
      <h3>{words("panel/states")}</h3>
      <dl className="facts">
        {states.map(({ id, start }) => (
          <Fact key={id} name={stateLabel(outline, id)}>
            {valueLabel(outline, values.get(id) ?? start)}
          </Fact>
        ))}
      </dl>
      <label className="field">
        <span>{words("panel/state")}</span>
        <select value={chosen} onChange={(event) => setChosen(event.target.value)}>
          <option value="">{words("panel/choose-state")}</option>
          {states.map(({ id }) => (
            <option key={id} value={id}>
              {stateLabel(outline, id)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{words("panel/state-found")}</span>
        <select value={value} onChange={(event) => setValue(event.target.value)}>
          <option value="">{words("panel/choose-value")}</option>
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {valueLabel(outline, choice)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{words("panel/why")}</span>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <button
        type="button"
        className="plain-button"
        disabled={!choices.includes(value) || reason.trim() === ""}
        onClick={() => void enter()}
      >
        {words("panel/enter-state")}
      </button>
    </section>
  );
}
