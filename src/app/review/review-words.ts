import type { Review } from "../../core/review/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

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
