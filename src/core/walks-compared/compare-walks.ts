import type { Learned, WalkRecord, Weighed } from "../learn/index.ts";
import type { Outline, OutlineStep, StepTime } from "../procedure/index.ts";
import { medianSpread, quantile } from "../statistics/index.ts";
import { inMinutes } from "../units/index.ts";
import type { ComparedWalk } from "./compared-walk.ts";
import { comparedWalk } from "./compared-walk.ts";

/** The 10, 25, 50, 75 and 90 % points, in minutes. */
export interface MinuteQuantiles {
  readonly p10: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p90: number;
}

/** One step in many walks ([CMP1]). */
export interface ComparedStep {
  readonly entry: OutlineStep;
  readonly planned: StepTime;
  /** In order of the walks. */
  readonly observations: readonly Weighed[];
  /** Of what was done, nothing broken off; `null` below 5 walks. */
  readonly quantiles: MinuteQuantiles | null;
  /** The factor by which times are usually off their median, 1 or above; `null` below 5 walks. */
  readonly spread: number | null;
}

/** Many walks of one procedure, side by side. */
export interface ComparedWalks {
  readonly outline: Outline;
  /** In order of when they began. */
  readonly walks: readonly ComparedWalk[];
  /** Of the finishes in PET of the walks that were closed as complete; `null` below 5 of them. */
  readonly finish: MinuteQuantiles | null;
  /** In reading order, without steps planned to take no time. */
  readonly steps: readonly ComparedStep[];
}

/** Below so many walks there are only the walks themselves. */
const ENOUGH_WALKS = 5;

/** Lays walks side by side. How long steps took is what was learned of them. */
export function compareWalks(records: readonly WalkRecord[], { outline, steps }: Learned): ComparedWalks {
  const walks = records.map(comparedWalk);
  const finishes = walks.flatMap(({ end, finish }) =>
    end === "complete" && finish !== null ? [inMinutes(finish)] : [],
  );
  return {
    outline,
    walks,
    finish: finishes.length >= ENOUGH_WALKS ? quantilesOf(finishes) : null,
    steps: steps.map(({ entry, planned, observations }): ComparedStep => {
      const done = observations.filter(({ isBrokenOff }) => !isBrokenOff);
      const isEnough = done.length >= ENOUGH_WALKS;
      const spread = medianSpread(done.map(({ y }) => y));
      return {
        entry,
        planned,
        observations,
        quantiles: isEnough ? quantilesOf(done.map(({ minutes }) => minutes)) : null,
        spread: isEnough && spread !== null ? Math.exp(spread) : null,
      };
    }),
  };
}

function quantilesOf(minutes: readonly number[]): MinuteQuantiles | null {
  const [p10, p25, p50, p75, p90] = [0.1, 0.25, 0.5, 0.75, 0.9].map((share) => quantile(minutes, share));
  if (p10 == null || p25 == null || p50 == null || p75 == null || p90 == null) return null;
  return { p10, p25, p50, p75, p90 };
}
