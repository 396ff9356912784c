import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { happensBefore } from "../order/index.ts";
import { reachFindings, sharedRouteFindings } from "../place/index.ts";
import type { Plan, PlanOptions } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, Outcomes, Outline, ReadProcedure } from "../procedure/index.ts";
import { activityOf, finding, outlineOf, readProcedure, scenariosOf } from "../procedure/index.ts";
import { custodyFindings } from "./custody-findings.ts";
import { raceFindings } from "./order-findings.ts";
import { peopleFindings } from "./people-findings.ts";
import { procedureFindings, watchFindings } from "./procedure-findings.ts";
import { noReturnFindings, refugeFindings, supplyFindings, turnBackFindings } from "./return-findings.ts";
import { stateFindings } from "./state-findings.ts";
import { textFindings } from "./text-findings.ts";

const LEVELS = { error: 0, caution: 1, advice: 2 } as const;

/** The findings of the checker, and the procedure when it could be read. */
export interface Checked extends ReadProcedure {
  /** The outline of the procedure; `null` when it could not be read. */
  readonly outline: Outline | null;
}

/** Options for a check, as for a plan: the instant of PET 0, and day and night from then on. */
export type CheckOptions = Pick<PlanOptions, "start" | "light">;

/**
 * Checks an outline in every scenario ([ORD4]), both without and with get-ahead tasks. Scenarios that perform the
 * same steps are checked once. Returns each finding once, errors first. A finding that only occurs in other scenarios
 * than the expected one says in which.
 */
export function checkOutline(outline: Outline, options: CheckOptions = {}): Finding[] {
  const scenarios = scenariosOf(outline);
  const found = new Map<string, Finding>();
  const performed = outline.steps.map(() => false);
  const seen = new Set<string>();
  const hasGetAheads = outline.steps.some(({ getAhead }) => getAhead);
  for (const outcomes of scenarios.outcomes) {
    for (const getAheads of hasGetAheads ? [false, true] : [false]) {
      const { active } = activityOf(outline, outcomes, getAheads);
      const key = active.map(Number).join("");
      if (seen.has(key)) continue;
      seen.add(key);
      for (const [index, isActive] of active.entries()) if (isActive) performed[index] = true;
      const plan = planOf(outline, { ...options, outcomes, getAheads });
      const isExpected = outcomes.size === 0 && !getAheads;
      const findings = [
        ...(getAheads ? withGetAheads(plan.findings) : plan.findings),
        ...scenarioFindings(plan, getAheads),
        ...(isExpected ? watchFindings(plan) : []),
      ];
      for (const one of findings) {
        const at = keyOf(one);
        if (found.has(at)) continue;
        const conditions = isExpected ? [] : conditionsOf(outcomes, getAheads);
        found.set(
          at,
          conditions.length > 0
            ? { ...one, message: message("check/when", { finding: one.message, conditions }) }
            : one,
        );
      }
    }
  }
  return [
    ...found.values(),
    ...procedureFindings(outline, scenarios.complete ? performed : null),
    ...textFindings(outline),
    ...(scenarios.complete ? [] : [notAllScenarios(scenarios.outcomes.length)]),
  ].sort((a, b) => LEVELS[a.level] - LEVELS[b.level]);
}

/** Returns the findings for the plan of one scenario, in addition to those that the plan itself has. */
function scenarioFindings(plan: Plan, getAheads: boolean): Finding[] {
  const { network, whereabouts } = plan;
  const along = [...peopleFindings(plan), ...reachFindings(network, whereabouts), ...refugeFindings(plan)];
  if (network.ring.length > 0) return along;
  const order = happensBefore(network);
  return [
    ...raceFindings(order),
    ...stateFindings(order),
    ...custodyFindings(plan),
    ...along,
    ...sharedRouteFindings(order, whereabouts),
    ...(getAheads ? [] : [...turnBackFindings(plan), ...noReturnFindings(plan), ...supplyFindings(plan)]),
  ];
}

/**
 * Adjusts the findings of a plan with get-aheads, which are only done if time allows. Exceeding the elapsed limit is
 * not reported, and missing a window is a caution instead of an error.
 */
function withGetAheads(findings: readonly Finding[]): Finding[] {
  return findings
    .filter(({ code }) => code !== "time/over-limit")
    .map((one) => (one.code === "window/no-fit" ? { ...one, level: "caution" } : one));
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

function conditionsOf(outcomes: Outcomes, getAheads: boolean): Message[] {
  return [
    ...[...outcomes].map(([decision, outcome]) => message("check/when-outcome", { decision, outcome })),
    ...(getAheads ? [message("check/when-get-aheads")] : []),
  ];
}

/** Checks the text of a procedure file. Returns all findings, each with its position in the file. Never throws. */
export function checkProcedureText(text: string, options: CheckOptions = {}): Checked {
  const read = readProcedure(text);
  if (!read.procedure) return { ...read, outline: null };
  const outline = outlineOf(read.procedure);
  return { ...read, outline, findings: [...read.findings, ...read.locate(checkOutline(outline, options))] };
}
