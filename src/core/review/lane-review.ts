import type { Course, CourseStep } from "../course/index.ts";
import type { CrewMember } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { minus, NO_TIME } from "../units/index.ts";
import type { CausedWait, LaneReview, StepReview, WaitTotal } from "./review.ts";

interface LaneMaterial {
  readonly member: CrewMember;
  readonly flown: Course;
  /** The steps of the lane, sorted by time. */
  readonly lane: readonly CourseStep[];
  readonly waits: readonly CausedWait[];
  readonly steps: readonly StepReview[];
}

/** Returns how one crew member spent the time of the walk. */
export function laneReview({ member, flown, lane, waits, steps }: LaneMaterial): LaneReview {
  const doings = lane.filter(({ stage }) => stage !== "skipped");
  const until = doings.reduce<Duration>((last, { finish }) => (finish > last ? finish : last), NO_TIME);
  const busy = timeCovered(doings);
  const staying = doings.filter(({ step }) => flown.outline.step(step)?.step.to === undefined);
  const translated = minus(busy, timeCovered(staying));
  const waited = addedUp(waits);
  const waitedTime = waited.reduce((sum, { time }) => sum + time, 0) as Duration;
  return {
    crew: member.id,
    until,
    worked: minus(busy, translated),
    translated,
    waited,
    idle: minus(minus(until, busy), waitedTime),
    done: steps.filter(({ ending }) => ending === "done").length,
    skipped: steps.filter(({ ending }) => ending === "skipped").length,
  };
}

/**
 * Returns the total time after PET 0 that the given steps cover. Steps must be sorted by time; overlapping times
 * count once.
 */
function timeCovered(steps: readonly CourseStep[]): Duration {
  let total = 0;
  let covered = 0;
  for (const { start, finish } of steps) {
    if (finish <= covered) continue;
    total += finish - Math.max(start, covered);
    covered = finish;
  }
  return total as Duration;
}

function kindOf(on: CausedWait["on"]): WaitTotal["on"] {
  if ("crew" in on) return { crew: [...on.crew].sort() };
  if ("lag" in on) return "lag";
  if ("notBefore" in on) return "not-before";
  return "window" in on ? "window" : "hold";
}

function addedUp(waits: readonly CausedWait[]): WaitTotal[] {
  const sums = new Map<string, WaitTotal>();
  for (const { on, from, to } of waits) {
    const kind = kindOf(on);
    const key = JSON.stringify(kind);
    sums.set(key, { on: kind, time: ((sums.get(key)?.time ?? 0) + to - from) as Duration });
  }
  return [...sums]
    .sort(([a, one], [b, other]) => other.time - one.time || (a < b ? -1 : 1))
    .map(([, sum]) => sum);
}
