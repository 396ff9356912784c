import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { CrewId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import { callsOf, windowLabel } from "./called.ts";
import type { Wait } from "./course-waits.ts";

/** A wait as a sentence without its full stop: who waits how long, and for what: `EV1 waits 6 min for EV2`. */
export function waitMessage(outline: Outline, { crew: id, from, to, on }: Wait): Message {
  const waiting = { crew: outline.crewMember(id)?.call ?? id, time: minus(to, from) };
  if (on === null) return message("course/waits-unknown", waiting);
  if ("hold" in on) return message("course/waits-hold", waiting);
  if ("window" in on)
    return message("course/waits-window", { ...waiting, window: windowLabel(outline, on.window) });
  if ("lag" in on)
    return message("course/waits-lag", { ...waiting, step: outline.step(on.lag)?.number ?? on.lag });
  if ("notBefore" in on) return message("course/waits-not-before", { ...waiting, at: on.notBefore });
  // With nobody else, the step that ends the wait is the waiting crew member's own.
  return on.crew.length === 0
    ? message("course/waits-own", waiting)
    : message("course/waits-crew", { ...waiting, others: callsOf(outline, byLane(outline, on.crew)) });
}

const byLane = (outline: Outline, crew: readonly CrewId[]): CrewId[] =>
  crew.toSorted((a, b) => outline.lane(a) - outline.lane(b));
