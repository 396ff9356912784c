import { marginOf } from "../course/index.ts";
import type { Supply } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { between, minus } from "../units/index.ts";
import type { Folded, Ledger, WalkState } from "../walk/index.ts";
import { foldLog, turnBackState, walkStateAt } from "../walk/index.ts";

/**
 * What is left of a supply when its owner's last step is done, as forecast before and after a surprise, in its unit and cut to three
 * digits; below zero, so much is short.
 */
export interface SupplyCost {
  readonly supply: Supply;
  readonly before: number;
  readonly after: number;
}

/** What the forecasts before and after a surprise come to ([TRN3]); whatever else happened meanwhile is in them too. */
export interface SurpriseCost {
  /** How much later the walk is forecast to finish; below zero: earlier. */
  readonly finish: Duration;
  /** The margin to the limit after it, and before it; `null` without a limit. */
  readonly margin: { readonly before: Duration; readonly after: Duration } | null;
  /** The supplies of which less is left by at least a hundredth of their range, the hardest hit first. */
  readonly supplies: readonly SupplyCost[];
}

const HOUR = 3_600_000;
/** A smaller share of a supply's range is not told. */
const TOLD_SHARE = 0.01;

/**
 * What a surprise cost, told by the forecasts of the log as it was when the surprise came and when it was over; `null` where
 * there was no forecast then.
 */
export function surpriseCost(folded: Folded, from: Instant, to: Instant): SurpriseCost | null {
  const [before, after] = [stateAt(folded, from), stateAt(folded, to)];
  if (!before?.forecast || !after?.forecast) return null;
  const [marginBefore, marginAfter] = [marginOf(before.forecast), marginOf(after.forecast)];
  return {
    finish: minus(after.forecast.finish, before.forecast.finish),
    margin:
      marginBefore === null || marginAfter === null ? null : { before: marginBefore, after: marginAfter },
    supplies: suppliesBetween(before, after),
  };
}

/** The walk as its log stood at an instant; what was left to do counts also where it was closed right then. */
function stateAt(folded: Folded, at: Instant): WalkState | null {
  const { ledger } = foldLog(
    folded.entries.filter((entry) => {
      const time = folded.timeOf(entry);
      return time < at || (time === at && entry.read.fact?.name !== "walk.closed");
    }),
  );
  return ledger && walkStateAt(ledger, at);
}

function suppliesBetween(before: WalkState, after: WalkState): readonly SupplyCost[] {
  const left = leftAtEnd(before);
  return [...leftAtEnd(after)]
    .flatMap(([key, { supply, level }]) => {
      const was = left.get(key);
      const share = was ? (was.level - level) / Math.abs(supply.full - supply.redline) : 0;
      return was && share >= TOLD_SHARE ? [{ supply, before: was.level, after: level, share }] : [];
    })
    .sort((a, b) => b.share - a.share)
    .map(({ supply, before: was, after: is }) => ({ supply, before: cut(was), after: cut(is) }));
}

/** To three digits, down: what is left is never told as more. */
function cut(value: number): number {
  const part = 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 2);
  return Number((Math.floor(value / part) * part).toPrecision(3));
}

/** What is left of each supply, at its present rate, when the last step of its owner is done. */
function leftAtEnd(
  state: WalkState,
): ReadonlyMap<string, { readonly supply: Supply; readonly level: number }> {
  const { forecast, ledger, pet } = state;
  const { outline } = ledger.inForce;
  return new Map(
    turnBackState(state).supplies.map(({ supply, forecast: { level, perHour } }) => {
      const lane = outline.lane(supply.crew);
      const finishes = [...(forecast?.steps.values() ?? [])].flatMap(({ step, finish }) =>
        outline.step(step)?.performers.includes(lane) ? [finish] : [],
      );
      // Where all steps of the owner are done, the level was higher then than it is now.
      const last = finishes.length === 0 ? (pet ?? 0) : Math.max(...finishes);
      return [
        `${supply.crew} ${supply.id}`,
        { supply, level: level - (perHour * (last - (pet ?? 0))) / HOUR },
      ];
    }),
  );
}

/** The PET of an instant of a walk. */
export const petOf = (ledger: Ledger, at: Instant): Duration =>
  between(ledger.petZero ?? ledger.opened.at, at);
