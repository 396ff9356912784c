import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { happensBefore } from "../order/index.ts";
import { reachFindings, sharedRouteFindings } from "../place/index.ts";
import type { Plan, PlanOptions } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, GetAheads, Outcomes, Outline, ReadProcedure, Task } from "../procedure/index.ts";
import {
  activityOf,
  finding,
  outlineOf,
  parseProcedure,
  readProcedure,
  scenariosOf,
} from "../procedure/index.ts";
import type { TaskId } from "../units/index.ts";
import { contactFindings } from "./contact-findings.ts";
import { custodyFindings } from "./custody-findings.ts";
import { inListOrder, withCauses } from "./following.ts";
import type { LonelyGetAhead } from "./get-ahead-findings.ts";
import { getAheadSets, neededGetAhead } from "./get-ahead-findings.ts";
import { raceFindings } from "./order-findings.ts";
import { peopleFindings } from "./people-findings.ts";
import { procedureFindings, watchFindings } from "./procedure-findings.ts";
import {
  lateHomeFindings,
  noReturnFindings,
  refugeFindings,
  supplyFindings,
  turnBackFindings,
} from "./return-findings.ts";
import { sizeFindings } from "./size-findings.ts";
import { stateFindings } from "./state-findings.ts";
import { textFindings } from "./text-findings.ts";
import { withTriedMends } from "./tried-mends.ts";
import { unitFindings } from "./unit-findings.ts";
import { writtenSteps } from "./written-steps.ts";

/** The findings of the checker, and the procedure when it could be read. */
export interface Checked extends ReadProcedure {
  /** The outline of the procedure; `null` when it could not be read. */
  readonly outline: Outline | null;
}

/** Options for a check, as for a plan: the instant of PET 0, and day and night from then on. */
export type CheckOptions = Pick<PlanOptions, "start" | "light">;

/**
 * Checks an outline in every scenario ([ORD4]): without get-ahead tasks, with all of them, and with each alone
 * ([PRO16]). Scenarios that perform the same steps are checked once. Returns each finding once, errors first, with what
 * follows from it under it. A finding that only occurs in other scenarios than the expected one says in which. The mends
 * are not tried; {@link checkProcedureText} does that.
 */
export function checkOutline(outline: Outline, options: CheckOptions = {}): Finding[] {
  const scenarios = scenariosOf(outline);
  const found = new Map<string, Finding>();
  const performed = outline.steps.map(() => false);
  const seen = new Set<string>();
  const written = writtenSteps(outline);
  const lonely = new Map<TaskId, LonelyGetAhead>();
  for (const outcomes of scenarios.outcomes) {
    for (const { getAheads, alone } of getAheadSets(outline, outcomes, scenarios.outcomes.length)) {
      const { active } = activityOf(outline, outcomes, getAheads);
      const key = active.map(Number).join("");
      if (seen.has(key)) continue;
      seen.add(key);
      for (const [index, isActive] of active.entries()) if (isActive) performed[index] = true;
      const isExpected = outcomes.size === 0 && getAheads === false;
      const missed: string[] = [];
      for (const one of runFindings(outline, { ...options, outcomes, getAheads })) {
        const at = keyOf(one);
        if (found.has(at)) continue;
        if (alone && one.level === "error") missed.push(at);
        const conditions = isExpected ? [] : conditionsOf(outcomes, getAheads, alone);
        found.set(
          at,
          conditions.length > 0
            ? { ...one, message: message("check/when", { finding: one.message, conditions }) }
            : one,
        );
      }
      if (alone && missed.length > 0 && !lonely.has(alone.id))
        lonely.set(alone.id, { task: alone, outcomes, missed });
    }
  }
  for (const one of lonely.values()) {
    const needs = neededGetAhead(outline, one, (getAheads) =>
      runFindings(outline, { ...options, outcomes: one.outcomes, getAheads }).map(keyOf),
    );
    for (const key of one.missed) {
      const follower = found.get(key);
      if (follower) found.set(key, { ...follower, follows: needs });
    }
    found.set(keyOf(needs), needs);
  }
  return inListOrder(
    withCauses(outline, [
      ...found.values(),
      ...procedureFindings(outline, scenarios.complete ? performed : null),
      ...textFindings(outline, written),
      ...unitFindings(outline, written),
      ...sizeFindings(written),
      ...(scenarios.complete ? [] : [notAllScenarios(scenarios.outcomes.length)]),
    ]),
  );
}

/**
 * Returns the findings of one scenario with some get-aheads: what its plan and its order, custody and places break.
 * Without `returns` those about the return are left out: they take most of the time, since it is planned from every step.
 */
export function runFindings(outline: Outline, options: PlanOptions, returns = true): Finding[] {
  const plan = planOf(outline, options);
  const isExpected = options.outcomes?.size === 0 && options.getAheads === false;
  return [
    ...(options.getAheads === false ? plan.findings : withGetAheads(plan.findings)),
    ...scenarioFindings(plan, options.getAheads !== false, returns),
    ...(isExpected ? watchFindings(plan) : []),
  ];
}

/** Returns the findings for the plan of one scenario, in addition to those that the plan itself has. */
function scenarioFindings(plan: Plan, getAheads: boolean, returns: boolean): Finding[] {
  const { network, whereabouts } = plan;
  const along = [...peopleFindings(plan), ...reachFindings(network, whereabouts), ...refugeFindings(plan)];
  if (network.ring.length > 0) return along;
  const order = happensBefore(network);
  return [
    ...raceFindings(order),
    ...stateFindings(order),
    ...custodyFindings(plan),
    ...contactFindings(plan),
    ...along,
    ...sharedRouteFindings(order, whereabouts),
    ...(returns && !getAheads
      ? [...turnBackFindings(plan), ...noReturnFindings(plan), ...lateHomeFindings(plan)]
      : []),
    ...supplyFindings(plan).map((one): Finding => (getAheads ? { ...one, level: "caution" } : one)),
  ];
}

/** What is an error of a plan, and a caution where only get-aheads bring it about: they are done if time allows. */
const OF_TIME: ReadonlySet<string> = new Set([
  "time/over-limit",
  "time/done-late",
  "time/started-late",
  "window/no-fit",
]);

/** Adjusts the findings of a plan with get-aheads, which are only done if time allows ([PRO18]). */
function withGetAheads(findings: readonly Finding[]): Finding[] {
  return findings.map((one) => (OF_TIME.has(one.code) ? { ...one, level: "caution" } : one));
}

/** Returns a key that is equal for findings which count as the same in different scenarios. */
function keyOf({ code, pointer, things, steps }: Finding): string {
  return JSON.stringify(
    /^(?:order|state)\//.test(code) ? [code, pointer, things, steps] : [code, pointer, things],
  );
}

function notAllScenarios(checked: number): Finding {
  const some = message("order/not-all-scenarios", { count: checked });
  return finding("caution", "order/not-all-scenarios", "", some);
}

function conditionsOf(outcomes: Outcomes, getAheads: GetAheads, alone: Task | null): Message[] {
  const which = alone
    ? [message("check/when-get-ahead", { task: alone.title })]
    : getAheads === false
      ? []
      : [message("check/when-get-aheads")];
  return [
    ...[...outcomes].map(([decision, outcome]) => message("check/when-outcome", { decision, outcome })),
    ...which,
  ];
}

/** The most steps that are looked at, over all scenarios, when mends are tried: about a second of work. */
const MOST_STEPS_TRIED = 5_000;

/** A check in two parts: what is wrong, and after it the mends, which take as long as a check each. */
export interface CheckedInTurn extends Checked {
  /** Tries the mends, one at a step; returns the findings with those that hold ([CHK1]). `null` where there is none to try. */
  readonly tryMends: (() => Generator<void, readonly Finding[]>) | null;
}

/** Checks a procedure that was read. Its findings have no mends until these were tried. Never throws. */
export function checkInTurn(read: ReadProcedure, options: CheckOptions = {}): CheckedInTurn {
  const { procedure, file, locate } = read;
  if (!procedure || !file) return { ...read, outline: null, tryMends: null };
  const outline = outlineOf(procedure);
  const found = checkOutline(outline, options);
  const all = (findings: readonly Finding[]) => [...read.findings, ...locate(findings)];
  const checkFile = (changed: unknown): readonly Finding[] => {
    const { procedure: mended, findings } = parseProcedure(changed);
    return mended ? [...findings, ...checkOutline(outlineOf(mended), options)] : findings;
  };
  const scenarios = scenariosOf(outline).outcomes.length;
  const most = Math.floor(MOST_STEPS_TRIED / Math.max(1, outline.steps.length * scenarios));
  const untried = found.map((one): Finding => ({ ...one, mend: null, mendSays: null }));
  const tryMends = function* tried() {
    return all(yield* withTriedMends(file, found, checkFile, most));
  };
  const isToTry = found.some(({ mend }) => mend !== null);
  return { ...read, outline, findings: all(untried), tryMends: isToTry ? tryMends : null };
}

/**
 * Checks the text of a procedure file. Returns all findings, each with its position in the file, and only those mends
 * that were tried and mend nothing but their own finding ([CHK1]). Never throws.
 */
export function checkProcedureText(text: string, options: CheckOptions = {}): Checked {
  const { tryMends, ...checked } = checkInTurn(readProcedure(text), options);
  if (!tryMends) return checked;
  const trying = tryMends();
  let next = trying.next();
  while (!next.done) next = trying.next();
  return { ...checked, findings: next.value };
}
