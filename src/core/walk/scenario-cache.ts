import type { Network, StatesNow } from "../order/index.ts";
import { networkOf } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import { whereaboutsOf } from "../place/index.ts";
import type { Outcomes, Outline } from "../procedure/index.ts";
import { activityOf } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";

/** The network of a walk with the decisions so far, and the crew's places along it. */
export interface WalkScenario {
  readonly network: Network;
  readonly whereabouts: Whereabouts;
}

/** How many scenarios are kept for one outline. A walk uses a few of them over and over. */
const MOST_KEPT = 64;

const known = new WeakMap<Outline, Map<string, WalkScenario>>();

/**
 * Returns the scenario of a walk. Decisions that were taken count as taken, the others as expected. Get-aheads are in
 * the lanes, except the steps in `leftOut`. With `now` the ways are those that are open as the states stand ([PRO13]).
 */
export function walkScenarioOf(
  outline: Outline,
  outcomes: Outcomes,
  leftOut: ReadonlySet<StepId> = new Set(),
  now: StatesNow | null = null,
): WalkScenario {
  const states = now && hasShutRoutes(outline) ? now : null;
  const key = JSON.stringify([[...outcomes].sort(), [...leftOut], states && standingKey(outline, states)]);
  const kept = known.get(outline) ?? new Map<string, WalkScenario>();
  known.set(outline, kept);
  const found = kept.get(key);
  if (found) return found;
  const activity = activityOf(outline, outcomes, true);
  const active = activity.active.map(
    (isActive, index) => isActive && !leftOut.has(outline.steps[index]?.step.id as StepId),
  );
  const network = networkOf(outline, { ...activity, active });
  const scenario = { network, whereabouts: whereaboutsOf(network, states) };
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, scenario);
  return scenario;
}

const hasShutRoutes = ({ procedure }: Outline) => procedure.routes.some(({ needs }) => needs !== undefined);

/** What the ways of a walk hang on: the values, and the steps that have set theirs. */
const standingKey = ({ steps }: Outline, { values, isComplete }: StatesNow) => [
  [...values],
  steps.flatMap(({ index, step }) => (step.sets && isComplete(index) ? [index] : [])),
];
