import type { Wait } from "../../core/course/index.ts";
import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { CrewId, Duration } from "../../core/units/index.ts";
import { clockText, hourMinuteText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

/** The performers of a step: `EV1 + Ground`. */
export function performersOf(outline: Outline, { performers }: OutlineStep): string {
  return performers.map((lane) => outline.crew[lane]?.call ?? "?").join(" + ");
}

const byLane = (outline: Outline, crew: readonly CrewId[]) =>
  crew.toSorted((a, b) => outline.lane(a) - outline.lane(b));

/** What a wait is for, to follow the word "waits": `for EV2`. */
export function waitReason(outline: Outline, on: Wait["on"]): string {
  if (on === null) return words("timeline/wait-unknown");
  if ("hold" in on) return words("timeline/wait-hold");
  if ("window" in on) {
    const window = outline.procedure.windows.find(({ id }) => id === on.window);
    return words("timeline/wait-for", { what: window?.label ?? on.window });
  }
  if ("notBefore" in on) return words("timeline/wait-not-before", { at: on.notBefore });
  if ("lag" in on) return words("timeline/wait-lag", { step: outline.step(on.lag)?.number ?? on.lag });
  return on.crew.length > 0
    ? words("timeline/wait-for", { what: callsOf(outline, byLane(outline, on.crew)) })
    : words("timeline/wait-step-before");
}

/**
 * Two PETs and the time between them: `1:12 to 1:16 (4 min)`. Seconds are shown for less than two minutes and off whole
 * minutes.
 */
export function spanText(start: Duration, finish: Duration): string {
  const length = (finish - start) as Duration;
  return words("timeline/span", { start, finish, length });
}

/** A PET to the minute, or to the second when it does not fall on a whole minute. */
export function petText(pet: Duration): string {
  return pet % 60_000 === 0 ? hourMinuteText(pet) : clockText(pet);
}

/** A difference from the plan in words. Up to half a minute counts as none. */
export function differenceText(late: number): string {
  if (Math.abs(late) < 30_000) return words("timeline/on-plan");
  return words(late > 0 ? "timeline/later" : "timeline/earlier", { time: late as Duration });
}

/** A text cut to fit into `room` px; empty when too little of it would remain. */
export function fittedText(text: string, room: number, perLetter: number): string {
  const letters = Math.floor(room / perLetter);
  if (text.length <= letters) return text;
  return letters < 4 ? "" : `${text.slice(0, letters - 1).trimEnd()}…`;
}
