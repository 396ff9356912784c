import { useId } from "react";
import type { Outline } from "../../core/procedure/index.ts";
import type { CrewId, Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** The longest time that can be typed for a step, in minutes: a day. */
const LONGEST = 24 * 60;

/** The number that was typed, with a point or a comma; `null` for an empty field and for what is none. */
export function numberOf(text: string): number | null {
  const typed = text.trim().replace(",", ".");
  const number = Number(typed);
  return typed === "" || !Number.isFinite(number) ? null : number;
}

/** The duration that was typed as minutes, to the second; `null` for what is none, or above a day. */
export function minutesOf(text: string): Duration | null {
  const minutes = numberOf(text);
  if (minutes === null || minutes < 0 || minutes > LONGEST) return null;
  return (Math.round(minutes * 60) * 1000) as Duration;
}

/** A field for a number of minutes, as text, so that a half-typed one is not changed. */
export function MinutesField({
  label,
  value,
  onValue,
}: {
  readonly label: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
}) {
  return (
    <label className="field">
      <span>{label}</span>
      <input
        inputMode="decimal"
        value={value}
        aria-invalid={value.trim() !== "" && numberOf(value) === null}
        onChange={(event) => onValue(event.target.value)}
      />
    </label>
  );
}

/** Who does something: everybody of the crew, to be ticked. The order is that of the crew. */
export function CrewTicks({
  outline,
  by,
  onBy,
}: {
  readonly outline: Outline;
  readonly by: readonly CrewId[];
  readonly onBy: (by: readonly CrewId[]) => void;
}) {
  const name = useId();
  const { crew } = outline;
  return (
    <fieldset className="amend-crew">
      <legend>{words("amending/by")}</legend>
      {crew.map(({ id, call }) => (
        <label key={id} className="amend-tick">
          <input
            type="checkbox"
            name={name}
            checked={by.includes(id)}
            onChange={() =>
              onBy(crew.flatMap((one) => (by.includes(one.id) !== (one.id === id) ? [one.id] : [])))
            }
          />
          {call}
        </label>
      ))}
    </fieldset>
  );
}
