import type { DecisionId, TaskId } from "../units/index.ts";
import type { Outline, OutlineStep } from "./outline.ts";
import type { Task } from "./schema.ts";

/** The outcomes of decisions, by decision id. A decision that is missing counts as its `expect` ([PRO5]). */
export type Outcomes = ReadonlyMap<DecisionId, string>;

/** No decision has been taken, so every one counts as its `expect`. */
export const AS_EXPECTED: Outcomes = new Map();

/** Which get-ahead tasks are performed: all, none, or those named ([PRO9], [PRO16]). */
export type GetAheads = boolean | ReadonlySet<TaskId>;

const isDone = (getAheads: GetAheads, { id }: Task) =>
  typeof getAheads === "boolean" ? getAheads : getAheads.has(id);

/** Which steps of an outline are performed. */
export interface Activity {
  /** For each step, by reading order index, whether it is active ([PRO4]). */
  readonly active: readonly boolean[];
  /** The decisions that arise: those made by an active step. */
  readonly arising: ReadonlySet<DecisionId>;
}

/**
 * Returns the steps that are active with the given outcomes. A step is active when every decision named in its `when`
 * arises (the step that makes it is active) and has the outcome given there. The steps of
 * get-ahead tasks that `getAheads` leaves out are inactive ([PRO9]).
 */
export function activityOf(outline: Outline, outcomes: Outcomes, getAheads: GetAheads): Activity {
  const arising = new Set<DecisionId>();
  const active = outline.steps.map(({ step, task, getAhead }) => {
    const isActive =
      (!getAhead || isDone(getAheads, task)) &&
      Object.entries(step.when ?? {}).every(
        ([decision, outcome]) =>
          arising.has(decision as DecisionId) &&
          outcomeOf(outline, outcomes, decision as DecisionId) === outcome,
      );
    if (isActive && step.decide) arising.add(step.decide.id);
    return isActive;
  });
  return { active, arising };
}

/** The outcome of a decision, or its `expect` while it has not been taken ([PRO5]); `null` for an unknown decision. */
export function outcomeOf(outline: Outline, outcomes: Outcomes, decision: DecisionId): string | null {
  return outcomes.get(decision) ?? outline.decision(decision)?.decision.expect ?? null;
}

/**
 * The lanes of an outline: for each crew member, in the order of `crew`, the reading order indices of the active steps
 * ([PRO1]).
 */
export function lanesOf(outline: Outline, active: readonly boolean[]): number[][] {
  const lanes: number[][] = outline.crew.map(() => []);
  for (const { index, performers } of outline.steps) {
    if (active[index]) for (const lane of performers) lanes[lane]?.push(index);
  }
  return lanes;
}

/**
 * With more combinations of outcomes than this, only single and pairwise departures from the expected outcomes are
 * examined ([ORD4]).
 */
export const MOST_SCENARIOS = 4096;

/** The scenarios of a procedure. */
export interface Scenarios {
  /** One set of outcomes for each scenario. The expected outcomes come first. */
  readonly outcomes: readonly Outcomes[];
  /**
   * True when `outcomes` has every combination that can arise, false when it has only single and pairwise departures.
   */
  readonly complete: boolean;
}

/**
 * Returns every combination of outcomes that can arise. Above {@link MOST_SCENARIOS} it returns only the single and
 * pairwise departures from the expected outcomes ([ORD4]).
 */
export function scenariosOf(outline: Outline): Scenarios {
  let found: Outcomes[] = [AS_EXPECTED];
  for (const { decision, madeBy } of outline.decisions) {
    const others = decision.outcomes.filter((outcome) => outcome !== decision.expect);
    const departures = found.flatMap((outcomes) =>
      arises(outline, outcomes, madeBy)
        ? others.map((other) => new Map([...outcomes, [decision.id, other]]))
        : [],
    );
    found = [...found, ...departures];
    if (found.length > MOST_SCENARIOS) return { outcomes: departuresOf(outline), complete: false };
  }
  return { outcomes: found, complete: true };
}

function arises(outline: Outline, outcomes: Outcomes, madeBy: OutlineStep): boolean {
  return activityOf(outline, outcomes, true).active[madeBy.index] === true;
}

function departuresOf(outline: Outline): Outcomes[] {
  const single = outline.decisions.flatMap(({ decision }) =>
    decision.outcomes
      .filter((outcome) => outcome !== decision.expect)
      .map((outcome) => [decision.id, outcome] as const),
  );
  const pairs = single.flatMap((first, index) =>
    single.slice(index + 1).flatMap((second) => (first[0] === second[0] ? [] : [new Map([first, second])])),
  );
  return [AS_EXPECTED, ...single.map((one) => new Map([one])), ...pairs];
}
