import type { HoldUp } from "../../core/course/index.ts";
import type { Location, Outline, StepRecord } from "../../core/procedure/index.ts";
import type { CrewId, Duration, Instant } from "../../core/units/index.ts";
import { formatInstant, hourMinuteText, later, lengthText } from "../../core/units/index.ts";

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** Call signs of crew members: `EV1 and EV2`. */
export function callsOf(outline: Outline, crew: readonly CrewId[]): string {
  return list(crew.map((id) => outline.crewMember(id)?.call ?? id));
}

const windowLabel = (outline: Outline, id: string) =>
  outline.procedure.windows.find((window) => window.id === id)?.label ?? id;

/** What somebody waits on, in words: `EV2`, `Darkness at 2:14 (11:29 UTC)`, `the hold to be lifted`; UTC where PET 0 is known. */
export function waitWords(
  outline: Outline,
  waits: readonly HoldUp[],
  petZero: Instant | null = null,
): string {
  const at = (pet: Duration) =>
    petZero === null
      ? hourMinuteText(pet)
      : `${hourMinuteText(pet)} (${formatInstant(later(petZero, pet)).slice(11, 16)} UTC)`;
  const crew = [...new Set(waits.flatMap((wait) => (wait.kind === "crew" ? [wait.crew] : [])))];
  const others = waits.flatMap((wait) => {
    if (wait.kind === "window") return [`${windowLabel(outline, wait.window)} at ${at(wait.until)}`];
    if (wait.kind === "lag") return [`time to pass until ${at(wait.until)}`];
    return wait.kind === "hold" ? ["the hold to be lifted"] : [];
  });
  return list([...(crew.length ? [callsOf(outline, crew)] : []), ...others]);
}

/** How far off the plan, in words and rounded to the minute: `on plan`, `6 min behind`, `2 min ahead`. */
export function behindWords(behind: Duration | null): string {
  if (behind === null) return "no plan";
  if (Math.abs(behind) < 60_000) return "on plan";
  return `${lengthText((Math.round(Math.abs(behind) / 60_000) * 60_000) as Duration)} ${behind > 0 ? "behind" : "ahead"}`;
}

/** Whether that is late, early, or neither, for colour beside the words. */
export function behindTone(behind: Duration | null): "late" | "early" | undefined {
  if (behind === null || Math.abs(behind) < 60_000) return undefined;
  return behind > 0 ? "late" : "early";
}

/** Where an item is, in words. */
export function locationWords(outline: Outline, location: Location | undefined): string {
  if (!location) return "nowhere known";
  if ("crew" in location) return `with ${callsOf(outline, [location.crew])}`;
  if ("place" in location) return `at ${outline.place(location.place)?.label ?? location.place}`;
  return `in ${outline.item(location.item)?.label ?? location.item}`;
}

/** A UCUM code as people write it; the unity unit is not written. */
export function unitText(unit: string): string {
  return (
    ({ "1": "", Cel: "°C", "N.m": "N·m", "%": "%" } as Record<string, string>)[unit] ??
    unit.replaceAll(/[[\]{}]/g, "")
  );
}

/** What a record may be: `6 to 7`, `at least 4`, `at most 40 kPa`; empty without limits. */
export function limitWords({ min, max, unit }: StepRecord): string {
  const suffix = unitText(unit) ? ` ${unitText(unit)}` : "";
  if (min !== undefined && max !== undefined)
    return min === max ? `${min}${suffix}` : `${min} to ${max}${suffix}`;
  if (min !== undefined) return `at least ${min}${suffix}`;
  return max === undefined ? "" : `at most ${max}${suffix}`;
}

/** A span to the minute; one time when both are the same. */
export function spanText(start: Duration, finish: Duration): string {
  const [from, to] = [hourMinuteText(start), hourMinuteText(finish)];
  return from === to ? from : `${from}–${to}`;
}
