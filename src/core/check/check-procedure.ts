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
import { procedureFindings, watchFindings } from "./procedure-findings.ts";
import { refugeFindings, supplyFindings, turnBackFindings } from "./return-findings.ts";
import { textFindings } from "./text-findings.ts";

const LEVELS = { error: 0, caution: 1, advice: 2 } as const;

/** What the checker found, and the procedure where it could be read. */
export interface Checked extends ReadProcedure {
  /** The procedure laid out; `null` when it could not be read. */
  readonly outline: Outline | null;
}

/** What a check may be asked with: when PET 0 is, and day and night from then on, as for a plan. */
export type CheckOptions = Pick<PlanOptions, "start" | "light">;

/**
 * Checks a laid-out procedure in every scenario ([ORD4]), with get-ahead tasks left out and done; scenarios in which the same steps
 * are performed are looked at once. Each finding once, errors first, and told when it comes up only otherwise than as expected.
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

/** What one scenario's plan shows beyond its own findings. */
function scenarioFindings(plan: Plan, getAheads: boolean): Finding[] {
  const { network, whereabouts } = plan;
  const along = [...reachFindings(network, whereabouts), ...refugeFindings(plan)];
  if (network.ring.length > 0) return along;
  const order = happensBefore(network);
  return [
    ...raceFindings(order),
    ...custodyFindings(plan),
    ...along,
    ...sharedRouteFindings(order, whereabouts),
    ...(getAheads ? [] : [...turnBackFindings(plan), ...supplyFindings(plan)]),
  ];
}

/** Get-aheads are only done if time allows: that they go over the limit is no finding, and that they miss a window no error. */
function withGetAheads(findings: readonly Finding[]): Finding[] {
  return findings
    .filter(({ code }) => code !== "time/over-limit")
    .map((one) => (one.code === "window/no-fit" ? { ...one, level: "caution" } : one));
}

/** What makes two findings the same in different scenarios. */
function keyOf({ code, pointer, things, steps }: Finding): string {
  return JSON.stringify(code.startsWith("order/") ? [code, pointer, things, steps] : [code, pointer, things]);
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

/** Checks the text of a procedure file: everything the checker has to say, each finding with its place in the file. Never throws. */
export function checkProcedureText(text: string, options: CheckOptions = {}): Checked {
  const read = readProcedure(text);
  if (!read.procedure) return { ...read, outline: null };
  const outline = outlineOf(read.procedure);
  return { ...read, outline, findings: [...read.findings, ...read.locate(checkOutline(outline, options))] };
}
