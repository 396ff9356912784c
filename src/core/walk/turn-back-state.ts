import type { Course } from "../course/index.ts";
import type { CrewReturn, ReturnBar, ReturnPlan } from "../plan/index.ts";
import { latestTurnBack, returnBarAt, returnPlanAt } from "../plan/index.ts";
import type { Supply } from "../procedure/index.ts";
import type { SupplyForecast, TurnBack } from "../supply/index.ts";
import { limitingSupply, supplyForecast } from "../supply/index.ts";
import type { Duration } from "../units/index.ts";
import { later, minus, NO_TIME } from "../units/index.ts";
import { begunCourseOf } from "./forecast.ts";
import { readingsOf } from "./supply-readings.ts";
import type { WalkState } from "./walk-state.ts";

/** A supply of a crew member, with its forecast ([FOR3]). */
export interface SupplyState {
  readonly supply: Supply;
  readonly forecast: SupplyForecast;
}

/** The crew member who is last at a refuge, and the return of everybody with it. */
export interface LongestReturn extends CrewReturn {
  /** The return time less the way: closeout, with all its waits. */
  readonly closeout: Duration;
  /** The return time of everybody ([PLN6]). */
  readonly total: Duration;
}

/** The limits of a walk, and how long the crew may go on before it must turn back. */
export interface TurnBackState {
  readonly supplies: readonly SupplyState[];
  /** The supply that reaches its redline first; `null` when no supply is forecast to reach it. */
  readonly limiting: (SupplyState & { readonly redlineAt: Duration }) | null;
  /** The plan of the return if the work is broken off now; `null` when it cannot be told. */
  readonly returnPlan: ReturnPlan | null;
  /** The state that bars the return; `null` when it can be told, or something else keeps it from that. */
  readonly bar: ReturnBar | null;
  /** `null` when the return cannot be told, or when everybody outside is in and has nothing left to do. */
  readonly longestReturn: LongestReturn | null;
  /** `null` when no supply and no elapsed limit sets a turn-back time, or when the return cannot be told. */
  readonly turnBack: (TurnBack & { readonly supply: SupplyState | null }) | null;
}

const known = new WeakMap<WalkState, TurnBackState>();

/**
 * Returns the supplies, the return and the turn-back time of a walk at the instant of its state. Before the clock is
 * started, supplies are forecast from PET 0 at the planned rates, and the return is the one at PET 0. The result is
 * cached per state: alerts, bar and panels of one second ask for it.
 */
export function turnBackState(state: WalkState): TurnBackState {
  const kept = known.get(state);
  if (kept) return kept;
  const limits = limitsAt(state);
  known.set(state, limits);
  return limits;
}

function limitsAt(state: WalkState): TurnBackState {
  const { ledger, pet } = state;
  const { outline } = ledger.inForce;
  const now = pet ?? NO_TIME;
  const petZero = ledger.petZero ?? ledger.opened.at;
  const supplies = outline.procedure.supplies.map(
    (supply): SupplyState => ({
      supply,
      forecast: supplyForecast(supply, readingsOf(ledger, supply), now),
    }),
  );
  const course = state.forecast ?? begunCourseOf(ledger, later(petZero, now));
  const returnPlan = returnPlanAt(course, now);
  const longestReturn = returnPlan && longestReturnOf(state, returnPlan);
  return {
    supplies,
    limiting: limitingSupply(supplies),
    returnPlan,
    bar: returnPlan === null ? returnBarAt(course, now) : null,
    longestReturn,
    // Without a known way back the turn-back time is unknown. Showing the limit itself would mislead the crew.
    turnBack: longestReturn && returnPlan && turnBackOf(course, returnPlan, supplies),
  };
}

/** The crew member who is in last, the first in the order of `crew` when several are; `null` when nobody is out. */
function longestReturnOf({ lanes, ledger }: WalkState, plan: ReturnPlan): LongestReturn | null {
  const isDone = plan.crew.every(
    ({ crew, home }) => home === plan.from && lanes[ledger.inForce.outline.lane(crew)]?.status === "finished",
  );
  if (isDone) return null;
  const last = plan.crew.reduce<CrewReturn | null>(
    (most, one) => (most && most.home >= one.home ? most : one),
    null,
  );
  return last && { ...last, closeout: minus(plan.total, last.way), total: plan.total };
}

/**
 * The first of the times at which the elapsed limit and each supply make the crew turn back ([PLN6]). A supply has to
 * last until its own crew member is at a refuge with their last step done. The limit counts when it is as early.
 */
function turnBackOf(
  course: Course,
  plan: ReturnPlan,
  supplies: readonly SupplyState[],
): TurnBackState["turnBack"] {
  const limit = course.outline.procedure.limits.elapsed;
  let first: TurnBackState["turnBack"] =
    limit === undefined ? null : { at: latestTurnBack(course, plan, limit), because: "limit", supply: null };
  for (const one of supplies) {
    const { redlineAt } = one.forecast;
    if (redlineAt === null) continue;
    const at = latestTurnBack(course, plan, redlineAt, one.supply.crew);
    if (first === null || at < first.at) first = { at, because: "supply", supply: one };
  }
  return first;
}
