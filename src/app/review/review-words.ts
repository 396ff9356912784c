import type { Outline } from "../../core/procedure/index.ts";
import type { CausedWait, Review, WaitTotal } from "../../core/review/index.ts";
import type { CrewId, Duration, Instant } from "../../core/units/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

const AS_GOOD_AS_NONE = 30_000;

/** True for a difference of at most half a minute, or an unknown one. */
export function isOnPlan(difference: Duration | null): boolean {
  return difference === null || Math.abs(difference) < AS_GOOD_AS_NONE;
}

/** A difference in time of day: `6 min later`, `on plan`. Up to half a minute counts as none. */
export function laterWords(difference: Duration | null): string {
  if (difference === null) return "–";
  if (Math.abs(difference) < AS_GOOD_AS_NONE) return words("review/on-plan");
  return words(difference > 0 ? "review/later" : "review/earlier", { time: difference });
}

/** A difference in length: `3 min longer`, `as long as planned`. */
export function longerWords(difference: Duration | null): string {
  if (difference === null) return "";
  if (Math.abs(difference) < AS_GOOD_AS_NONE) return words("review/as-long");
  return words(difference > 0 ? "review/longer" : "review/less", { time: difference });
}

/** When something happened: its PET, or that it was before the clock was started. */
export function petOf({ petZero }: Review, at: Instant): string {
  return petZero === null ? words("review/before-pet-zero") : clockText(between(petZero, at));
}

/** Who made an entry, by call sign where it is one of the crew; a dash when the entry names nobody. */
export function actorWords({ outline }: Review, actor: string | null): string {
  return outline.crew.find(({ id }) => id === actor)?.call ?? actor ?? "–";
}

const windowLabel = (outline: Outline, id: string) =>
  outline.procedure.windows.find((window) => window.id === id)?.label ?? id;

/** The crew members waited for. With none, the step that ended the wait was the waiting crew member's own. */
const forCrew = (outline: Outline, crew: readonly CrewId[]) =>
  crew.length > 0 ? words("review/wait-crew", { crew: callsOf(outline, crew) }) : words("review/wait-own");

/** What somebody waited for before a step, in words. */
export function waitedFor(outline: Outline, on: CausedWait["on"]): string {
  if ("crew" in on) return forCrew(outline, on.crew);
  if ("lag" in on) return words("review/wait-lag", { step: outline.step(on.lag)?.number ?? on.lag });
  if ("notBefore" in on) return words("review/wait-not-before", { at: on.notBefore });
  return "window" in on
    ? words("review/wait-window", { window: windowLabel(outline, on.window) })
    : words("review/wait-hold");
}

/** What a lane waited for over the whole walk, in words. */
export function waitedOn(outline: Outline, on: WaitTotal["on"]): string {
  if (typeof on === "object") return forCrew(outline, on.crew);
  return words(`review/waits-${on}`);
}
