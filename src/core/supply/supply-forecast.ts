import type { Duration } from "../units/index.ts";
import { LONGEST_DURATION, minus, NO_TIME } from "../units/index.ts";
import { fittedLine } from "./fitted-line.ts";

const HOUR = 3_600_000;

/**
 * The number of latest readings that the line is fitted through: enough to even out the gauge, few enough to follow a
 * change of work.
 */
export const READINGS_FITTED = 6;

/**
 * A reading that exceeds the one before by more than this share of (full − redline) is a refill, and the fit starts
 * again from it. A smaller rise is taken to be noise of the gauge.
 */
export const REFILL_SHARE = 0.05;

/**
 * The shortest time from the first to the last of the fitted readings, in ms. Readings that are closer together tell the
 * unsteadiness of the gauge, and no rate.
 */
export const SHORTEST_FIT = 5 * 60_000;

/** What a procedure says about a supply. Levels are in the supply's own unit. */
export interface SupplyPlan {
  readonly full: number;
  readonly redline: number;
  /** The planned use in one hour. */
  readonly perHour: number;
}

/** A reading of a supply's gauge. */
export interface Reading {
  /** The PET of the reading; below zero before the clock was started. */
  readonly at: Duration;
  readonly value: number;
}

/** Where a supply is heading ([FOR3]). Levels are in the supply's unit, times in PET. */
export interface SupplyForecast {
  /**
   * `fit`: the line through the latest readings. `plan`: the planned rate, because no line can be fitted or it does not
   * fall.
   */
  readonly basis: "fit" | "plan";
  /** The use in one hour; zero or more. */
  readonly perHour: number;
  /** The level at `now`. */
  readonly level: number;
  /**
   * When the redline is reached, cut to the millisecond; in the past if it has been. `null` when that is more than a
   * year after `now`.
   */
  readonly redlineAt: Duration | null;
  /**
   * The standard deviation of the readings about the line (n − 2 degrees of freedom); `null` unless a line goes through
   * three readings or more.
   */
  readonly spread: number | null;
  /**
   * The standard error of `perHour` as fitted, in the supply's unit an hour; `null` unless a line goes through three
   * readings or more.
   */
  readonly perHourSpread: number | null;
  /** The number of readings that the line goes through; zero with the planned rate. */
  readonly fitted: number;
  /** The last reading; `null` when there is none. */
  readonly last: Reading | null;
  /** The time since the last reading, never below zero; `null` when there is none. */
  readonly age: Duration | null;
}

/**
 * The forecast of a supply at `now` from its readings up to then, in any order ([FOR3]). It is an ordinary least
 * squares fit through the latest {@link READINGS_FITTED} readings since the last refill.
 *
 * The planned rate from the last reading is used instead when there are fewer than two readings, when the first and the
 * last of them are less than {@link SHORTEST_FIT} apart, when values are too large to compute with, or when the line does not fall (a stuck gauge must not
 * reassure). Without any reading, the supply starts full at PET 0. When the last reading is at or below the redline,
 * the redline counts as reached no later than that reading. Readings that are not finite numbers are ignored.
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
  const isLong = used.length > 1 && minus(used.at(-1)?.at ?? NO_TIME, used[0]?.at ?? NO_TIME) >= SHORTEST_FIT;
  const line = isLong ? fittedLine(used.map(({ at, value }) => [at, value])) : null;
  const isBelow = last !== null && last.value <= plan.redline;
  const noLater = (at: Duration | null) => (isBelow && (at === null || at > last.at) ? last.at : at);
  if (line && line.slope < 0) {
    return {
      basis: "fit",
      perHour: -line.slope * HOUR,
      level: line.at(now),
      redlineAt: noLater(whenReached(plan.redline, line.at(now), -line.slope, now)),
      spread: line.spread,
      perHourSpread: line.slopeSpread === null ? null : line.slopeSpread * HOUR,
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
    perHourSpread: null,
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

/** When a level that falls by `slope` a millisecond reaches the redline. */
function whenReached(redline: number, level: number, slope: number, now: Duration): Duration | null {
  const left = (level - redline) / slope;
  if (left > LONGEST_DURATION || (slope === 0 && level > redline)) return null;
  return left > -LONGEST_DURATION ? (Math.floor(now + left) as Duration) : now;
}
