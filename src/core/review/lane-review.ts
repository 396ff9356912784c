import type { Outline } from "../procedure/index.ts";
import type { CrewId, Duration, Instant } from "../units/index.ts";
import { between, minus } from "../units/index.ts";
import type { ActualWait, LaneReview, LaneWait, StepReview } from "./review.ts";
import type { Doing } from "./step-waits.ts";
import { unionOf } from "./step-waits.ts";

interface LaneMaterial {
  readonly crew: CrewId;
  readonly outline: Outline;
  /** The steps it really did or is at, in the order of their starts. */
  readonly doings: readonly Doing[];
  readonly waits: readonly ActualWait[];
  readonly steps: readonly StepReview[];
  readonly petZero: Instant;
}

/** What became of one crew member's time. */
export function laneReview({ crew, outline, doings, waits, steps, petZero }: LaneMaterial): LaneReview {
  const finish = doings.reduce<Instant>((last, one) => (one.finish > last ? one.finish : last), petZero);
  const until = between(petZero, finish);
  const busy = unionOf(
    doings.map((doing) => ({ ...doing, start: doing.start < petZero ? petZero : doing.start })),
  );
  const staying = doings.filter(({ index }) => outline.steps[index]?.step.to === undefined);
  const translated = minus(busy, unionOf(staying));
  const waited = addedUp(waits);
  const waitedTime = waited.reduce((sum, { time }) => sum + time, 0) as Duration;
  return {
    crew,
    until,
    worked: minus(busy, translated),
    translated,
    waited,
    idle: minus(minus(until, busy), waitedTime),
    done: steps.filter(({ ending }) => ending === "done").length,
    skipped: steps.filter(({ ending }) => ending === "skipped").length,
  };
}

function addedUp(waits: readonly ActualWait[]): LaneWait[] {
  const sums = new Map<string, LaneWait>();
  for (const { on, time } of waits) {
    const kind =
      "crew" in on ? { crew: [...on.crew].sort() } : "lag" in on ? "lag" : "window" in on ? "window" : "hold";
    const key = JSON.stringify(kind);
    sums.set(key, { on: kind, time: ((sums.get(key)?.time ?? 0) + time) as Duration });
  }
  return [...sums]
    .sort(([a, one], [b, other]) => other.time - one.time || (a < b ? -1 : 1))
    .map(([, sum]) => sum);
}
