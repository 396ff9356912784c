import type { Duration } from "../units/index.ts";
import { LONGEST_DURATION, minus } from "../units/index.ts";
import { fittedLine } from "./fitted-line.ts";

const HOUR = 3_600_000;

/** The line is fitted through so many of the last readings: enough to even out the gauge, few enough to follow a change of work. */
export const READINGS_FITTED = 6;

/**
 * A reading above the one before it by more than this share of full − redline is a refill, and the line starts anew there;
 * a smaller rise is taken for the gauge's unsteadiness.
 */
export const REFILL_SHARE = 0.05;

/** What a procedure says of a supply; levels in its own unit. */
export interface SupplyPlan {
  readonly full: number;
  readonly redline: number;
  /** Planned use in one hour. */
  readonly perHour: number;
}

/** A reading of a supply's gauge. */
export interface Reading {
  /** When, in PET; below zero before the clock was started. */
  readonly at: Duration;
  readonly value: number;
}

/** Where a supply is heading ([FOR3]). Levels in the supply's unit, times in PET. */
export interface SupplyForecast {
  /** `fit`: the line through the last readings. `plan`: the planned rate, because no line can be laid or it does not fall. */
  readonly basis: "fit" | "plan";
  /** Used in one hour; zero or more. */
  readonly perHour: number;
  /** The level at `now`. */
  readonly level: number;
  /** When the redline is met, cut to the millisecond, in the past if it has been; `null` when not within a year of `now`. */
  readonly redlineAt: Duration | null;
  /** Standard deviation of the readings about the line (n − 2); `null` without a line through three readings or more. */
  readonly spread: number | null;
  /** How many readings the line goes through; zero on the planned rate. */
  readonly fitted: number;
  /** The last reading; `null` when there is none. */
  readonly last: Reading | null;
  /** The time since the last reading, never below zero; `null` when there is none. */
  readonly age: Duration | null;
}

/**
 * The forecast of a supply at `now` from its readings up to then, in any order ([FOR3]): ordinary least squares through the last
 * {@link READINGS_FITTED} since the last refill. With fewer than two, all at one time, values too large to reckon with, or a line
 * that does not fall (a stuck gauge is no comfort), the planned rate from the last reading; without any, from full at PET 0. A last reading
 * at or below the redline counts as the redline met no later than that reading. Readings that are no finite numbers are passed over.
 */
export function supplyForecast(
  plan: SupplyPlan,
  readings: readonly Reading[],
  now: Duration,
): SupplyForecast {
  const known = readings
    .filter(({ at, value }) => Number.isFinite(at) && Number.isFinite(value) && at <= now)
    .sort((a, b) => a.at - b.at);
  const last = known.at(-1) ?? null;
  const age = last ? minus(now, last.at) : null;
  const used = sinceRefill(plan, known).slice(-READINGS_FITTED);
  const line = fittedLine(used.map(({ at, value }) => [at, value]));
  const isBelow = last !== null && last.value <= plan.redline;
  const noLater = (at: Duration | null) => (isBelow && (at === null || at > last.at) ? last.at : at);
  if (line && line.slope < 0) {
    return {
      basis: "fit",
      perHour: -line.slope * HOUR,
      level: line.at(now),
      redlineAt: noLater(whenReached(plan.redline, line.at(now), -line.slope, now)),
      spread: line.spread,
      fitted: used.length,
      last,
      age,
    };
  }
  const slope = Math.max(0, plan.perHour) / HOUR;
  const level = (last?.value ?? plan.full) - slope * (now - (last?.at ?? 0));
  return {
    basis: "plan",
    perHour: Math.max(0, plan.perHour),
    level,
    redlineAt: noLater(whenReached(plan.redline, level, slope, now)),
    spread: null,
    fitted: 0,
    last,
    age,
  };
}

function sinceRefill(plan: SupplyPlan, readings: readonly Reading[]): readonly Reading[] {
  const rise = REFILL_SHARE * Math.abs(plan.full - plan.redline);
  const refill = readings.findLastIndex(
    ({ value }, position) => position > 0 && value - (readings[position - 1]?.value ?? value) > rise,
  );
  return readings.slice(Math.max(0, refill));
}

/** When a level that falls by `slope` a millisecond meets the redline. */
function whenReached(redline: number, level: number, slope: number, now: Duration): Duration | null {
  const left = (level - redline) / slope;
  if (left > LONGEST_DURATION || (slope === 0 && level > redline)) return null;
  return left > -LONGEST_DURATION ? (Math.floor(now + left) as Duration) : now;
}
