import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Plan, PlanOptions } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, GetAheads, Outcomes, Outline, Task } from "../procedure/index.ts";
import { activityOf, scenariosOf } from "../procedure/index.ts";
import type { TaskId } from "../units/index.ts";
import { contactFindings } from "./contact-findings.ts";
import { custodyFindings } from "./custody-findings.ts";
import type { LonelyGetAhead } from "./get-ahead-findings.ts";
import { getAheadSets, neededGetAhead } from "./get-ahead-findings.ts";
import { watchFindings } from "./procedure-findings.ts";
import { lateHomeFindings, noReturnFindings, supplyFindings, turnBackFindings } from "./return-findings.ts";
import { ScenarioMemory } from "./scenario-memory.ts";

/** Options for a check, as for a plan: the instant of PET 0, and day and night from then on. */
export type CheckOptions = Pick<PlanOptions, "start" | "light">;

/** What all scenarios of an outline come to. */
export interface ScenarioCheck {
  /** Each finding once. */
  readonly found: readonly Finding[];
  /** For each step whether some scenario performs it; `null` where not all scenarios were looked at. */
  readonly performed: readonly boolean[] | null;
  /** How many sets of outcomes were looked at. */
  readonly count: number;
}

/** Looks at every scenario of an outline ([ORD4]), each set of steps that is performed once. `memoryOf` gives what is remembered of one, by its active steps. */
export function scenarioCheck(
  outline: Outline,
  options: CheckOptions,
  memoryOf: (active: string) => ScenarioMemory = () => new ScenarioMemory(),
): ScenarioCheck {
  const scenarios = scenariosOf(outline);
  const found = new Map<string, Finding>();
  const performed = outline.steps.map(() => false);
  const seen = new Set<string>();
  const lonely = new Map<TaskId, LonelyGetAhead>();
  for (const outcomes of scenarios.outcomes) {
    for (const { getAheads, alone } of getAheadSets(outline, outcomes, scenarios.outcomes.length)) {
      const activity = activityOf(outline, outcomes, getAheads);
      const { active } = activity;
      const key = active.map(Number).join("");
      if (seen.has(key)) continue;
      seen.add(key);
      for (const [index, isActive] of active.entries()) if (isActive) performed[index] = true;
      const isExpected = outcomes.size === 0 && getAheads === false;
      const missed: string[] = [];
      const known = memoryOf(key);
      const ground = known.ground(outline, activity);
      for (const one of runFindings(outline, { ...options, outcomes, getAheads, ground }, { known })) {
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
  const { complete } = scenarios;
  return {
    found: [...found.values()],
    performed: complete ? performed : null,
    count: scenarios.outcomes.length,
  };
}

/** How the findings of a scenario are worked out. */
interface RunLook {
  /** False leaves those about the return out: they take most of the time, since it is planned from every step. */
  readonly returns?: boolean;
  readonly known?: ScenarioMemory;
}

/**
 * Returns the findings of one scenario with some get-aheads: what its plan and its order, custody and places break.
 */
export function runFindings(
  outline: Outline,
  options: PlanOptions,
  { returns = true, known = new ScenarioMemory() }: RunLook = {},
): Finding[] {
  const plan = planOf(outline, options);
  const isExpected = options.outcomes?.size === 0 && options.getAheads === false;
  return [
    ...(options.getAheads === false ? plan.findings : withGetAheads(plan.findings)),
    ...scenarioFindings(plan, options.getAheads !== false, returns, known),
    ...(isExpected ? watchFindings(plan) : []),
  ];
}

/** Returns the findings for the plan of one scenario, in addition to those that the plan itself has. */
function scenarioFindings(
  plan: Plan,
  getAheads: boolean,
  returns: boolean,
  known: ScenarioMemory,
): Finding[] {
  const { along, ordered, shared } = known.timeless(plan);
  if (plan.network.ring.length > 0) return [...along];
  return [
    ...ordered,
    ...known.custody(plan, () => custodyFindings(plan)),
    ...contactFindings(plan),
    ...along,
    ...shared,
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
