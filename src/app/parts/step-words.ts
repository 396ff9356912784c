import { crewHolding } from "../../core/custody/index.ts";
import type { Location, Outline, StateValues } from "../../core/procedure/index.ts";
import { stateLabel, valueLabel } from "../../core/procedure/index.ts";
import type { Limits, Quantity } from "../../core/quantity/index.ts";
import { limitsOf } from "../../core/quantity/index.ts";
import type { CrewId, Duration, StateId, StepId } from "../../core/units/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** Call signs of crew members: `EV1 and EV2`. */
export function callsOf(outline: Outline, crew: readonly CrewId[]): string {
  return words("figures/list", { items: crew.map((id) => outline.crewMember(id)?.call ?? id) });
}

/** A delay against the plan in words, rounded to the minute: `on plan`, `6 min behind`, `2 min ahead`. */
export function behindWords(behind: Duration | null): string {
  if (behind === null) return words("parts/no-plan");
  if (Math.abs(behind) < 60_000) return words("parts/on-plan");
  const time = (Math.round(Math.abs(behind) / 60_000) * 60_000) as Duration;
  return behind > 0 ? words("parts/behind", { time }) : words("parts/ahead", { time });
}

/** Whether a delay counts as late, early, or neither, for the colour beside the words. */
export function behindTone(behind: Duration | null): "late" | "early" | undefined {
  if (behind === null || Math.abs(behind) < 60_000) return undefined;
  return behind > 0 ? "late" : "early";
}

/** Where an item is, in words. */
export function locationWords(outline: Outline, location: Location | undefined): string {
  if (!location) return words("parts/item-nowhere");
  if ("place" in location)
    return words("parts/item-at", { place: outline.place(location.place)?.label ?? location.place });
  if ("item" in location)
    return words("parts/item-in", { item: outline.item(location.item)?.label ?? location.item });
  return words("parts/item-with", { crew: callsOf(outline, crewHolding(location)) });
}

/** The values of states that a step needs or sets, in words: `Sluice hatch open`. */
export function stateWords(outline: Outline, values: StateValues | undefined): string[] {
  return (Object.entries(values ?? {}) as [StateId, string][]).map(([state, value]) =>
    words("parts/state-is", {
      state: stateLabel(outline, state),
      value: valueLabel(outline, value),
    }),
  );
}

/** A step as tables name it, by number and action; a dash for none. An unknown id is shown as it is. */
export function stepWords(outline: Outline, id: StepId | null): string {
  if (id === null) return "–";
  const entry = outline.step(id);
  return entry ? `${entry.number} ${entry.step.do}` : id;
}

/** A quantity as it was written, and in the reader's units beside that ([WRD5]): `4.3 psi (29.6 kPa)`. */
export function quantityWords(quantity: Quantity): string {
  return words("figures/quantity", { quantity });
}

/** The limits of a record: `6 to 7`, `at least 4`, `at most 40 kPa (5.8 psi)`; empty without limits. */
export function limitWords(record: Limits): string {
  const { min: least, max: most } = limitsOf(record);
  if (least && most)
    return least.value === most.value
      ? quantityWords(least)
      : words("parts/limit-range", { limits: { least, most } });
  if (least) return words("parts/limit-least", { least });
  return most ? words("parts/limit-most", { most }) : "";
}

/** A span to the minute; a single time when both ends are the same. */
export function spanText(start: Duration, finish: Duration): string {
  const [from, to] = [hourMinuteText(start), hourMinuteText(finish, "up")];
  return from === to ? from : `${from}–${to}`;
}
