import { message } from "../../words/index.ts";
import { runFindings } from "../check/index.ts";
import type { Outlook, WindowMargin } from "../plan/index.ts";
import { boundFindings, outlookOf, windowMargins } from "../plan/index.ts";
import type { Change, Finding, Supply } from "../procedure/index.ts";
import type { Duration, Instant, StepId, TaskId, WindowId } from "../units/index.ts";
import { later, minus, NO_TIME } from "../units/index.ts";
import type { LaidOutProcedure, Ledger, LightInForce, WalkState } from "../walk/index.ts";
import {
  amendedAt,
  forecastRisk,
  lightInForce,
  progressOf,
  turnBackState,
  unfitStepOf,
  walkStateAt,
} from "../walk/index.ts";
import type { AmendmentEffectOptions, JudgedAmendment, WindowEffect } from "./amendment-effect.ts";
import { findingsEffect } from "./findings-effect.ts";
import { graveMessages } from "./grave-messages.ts";
import type { Sides } from "./sides.ts";

/**
 * Returns what changes to the plan would come to if a lead entered them at the instant of the state ([AMD3]), or the
 * reason why they would have no effect ([WLK6]): a deadlock is one.
 */
export function amendmentEffect(
  state: WalkState,
  changes: readonly Change[],
  { thorough }: AmendmentEffectOptions,
): JudgedAmendment {
  const { ledger, pet, phase } = state;
  if (phase === "closed") return { effect: null, refusal: message("walk/is-closed") };
  const at = later(ledger.petZero ?? ledger.opened.at, pet ?? NO_TIME);
  const amended = amendedAt(ledger, changes, at);
  if (!amended.ledger) return { effect: null, refusal: amended.refusal };
  const before = sideOf(state, at, thorough);
  const after = sideOf(walkStateAt(amended.ledger, at), at, thorough);
  const both = <Value>(of: (side: Side) => Value): Sides<Value> => ({ before: of(before), after: of(after) });
  const effect = {
    ledger: amended.ledger,
    steps: amended.steps,
    outlook: both((side) => side.outlook),
    withinLimit: both((side) => side.withinLimit),
    unfit: both((side) => side.unfit),
    home: both((side) => side.home),
    turnBack: both((side) => side.turnBack),
    windows: windowsEffect(
      both((side) => side.windows),
      amended.ledger.inForce,
    ),
    supplies: after.supplies.map(({ supply, left }) => ({
      supply,
      left: { before: before.supplies.find((one) => isSame(one.supply, supply))?.left ?? null, after: left },
    })),
    findings: findingsEffect(before.findings, after.findings),
  };
  return { effect: { ...effect, grave: graveMessages(effect) }, refusal: null };
}

const isSame = (a: Supply, b: Supply) => a.crew === b.crew && a.id === b.id;

/** What one side comes to. */
interface Side {
  readonly outlook: Outlook;
  readonly withinLimit: number | null;
  readonly unfit: StepId | null;
  readonly home: Duration | null;
  readonly turnBack: Duration | null;
  readonly windows: readonly WindowMargin[];
  readonly supplies: readonly { readonly supply: Supply; readonly left: Duration | null }[];
  readonly findings: readonly Finding[];
}

function sideOf(state: WalkState, at: Instant, thorough: boolean): Side {
  const { ledger, forecast, plan } = state;
  const { outline } = ledger.inForce;
  const risk = thorough ? forecastRisk(state) : null;
  const { returnPlan, turnBack, supplies } = turnBackState(state);
  const limit = outline.procedure.limits.elapsed ?? null;
  return {
    outlook: outlookOf(limit, plan.timeline?.course.finish ?? null, forecast?.finish ?? null, risk),
    withinLimit: risk?.withinLimit ?? null,
    unfit: forecast ? null : unfitStepOf(ledger, at),
    home: returnPlan?.total ?? null,
    turnBack: turnBack?.at ?? null,
    windows: forecast
      ? windowMargins(outline, forecast.windows, ({ step }) => {
          const one = forecast.steps.get(step.id);
          return one?.stage === "planned" ? one : null;
        })
      : [],
    supplies: supplies.map(({ supply, forecast: { redlineAt } }) => {
      const last = forecast && lastFinish(state, supply);
      return { supply, left: last === null || redlineAt === null ? null : minus(redlineAt, last) };
    }),
    findings: [...checkedNow(ledger, thorough), ...(forecast ? boundFindings(forecast) : [])],
  };
}

/** When the last step of the owner of a supply is done by the forecast; `null` when none is. */
function lastFinish({ ledger, forecast }: WalkState, { crew }: Supply): Duration | null {
  const lane = ledger.inForce.outline.lane(crew);
  let last: Duration | null = null;
  for (const { step, finish } of forecast?.steps.values() ?? []) {
    const isOwn = ledger.inForce.outline.step(step)?.performers.includes(lane);
    if (isOwn && (last === null || finish > last)) last = finish;
  }
  return last;
}

function windowsEffect(
  { before, after }: Sides<readonly WindowMargin[]>,
  { outline }: LaidOutProcedure,
): readonly WindowEffect[] {
  const of = (margins: readonly WindowMargin[], id: WindowId) =>
    margins.find(({ window }) => window === id) ?? null;
  return outline.procedure.windows.flatMap(({ id }) => {
    const margin = { before: of(before, id), after: of(after, id) };
    return margin.before || margin.after ? [{ window: id, margin }] : [];
  });
}

/** What was found of a procedure, and by which light: it may be chosen anew while the procedure stays. */
interface Checked {
  readonly light: LightInForce["light"];
  readonly found: Map<string, readonly Finding[]>;
}

const checked = new WeakMap<LaidOutProcedure, Checked>();

/**
 * The findings of the checker for the procedure in force as a whole, with the decisions that were taken and the
 * get-aheads that were begun.
 */
function checkedNow(ledger: Ledger, thorough: boolean): readonly Finding[] {
  const { inForce, outcomes } = ledger;
  const getAheads = new Set<TaskId>();
  for (const { step, task, getAhead } of inForce.outline.steps) {
    if (getAhead && progressOf(ledger, step.id).status === "done") getAheads.add(task.id);
  }
  const { start, light } = lightInForce(ledger);
  const key = JSON.stringify([thorough, start, [...outcomes].sort(), [...getAheads].sort()]);
  const before = checked.get(inForce);
  const kept = before?.light === light ? before : { light, found: new Map<string, readonly Finding[]>() };
  checked.set(inForce, kept);
  const found =
    kept.found.get(key) ??
    runFindings(
      inForce.outline,
      { start, light, outcomes, getAheads: getAheads.size === 0 ? false : getAheads },
      { returns: thorough },
    );
  kept.found.set(key, found);
  return found;
}
