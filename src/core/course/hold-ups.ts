import type { Network } from "../order/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, DecisionId, Duration, StepId, WindowId } from "../units/index.ts";
import { NO_TIME, plus } from "../units/index.ts";

/** Something that keeps a step from starting, with the PET at which that ends; `null` when the end is unknown. */
export type HoldUp =
  | {
      /** A crew member who has yet to complete `step`. `last` is the step whose completion ends this hold-up. */
      readonly kind: "crew";
      readonly crew: CrewId;
      readonly step: StepId;
      readonly last: StepId;
      readonly until: Duration | null;
      /** The shortest time that must pass after `last` before the step may start. */
      readonly lag: Duration;
    }
  | { readonly kind: "lag"; readonly step: StepId; readonly until: Duration }
  | { readonly kind: "hold"; readonly since: Duration; readonly until: Duration | null }
  /** The step does not start before this PET ([PRO17]). */
  | { readonly kind: "notBefore"; readonly until: Duration }
  | { readonly kind: "window"; readonly window: WindowId; readonly until: Duration };

/** A crew member who keeps a step from starting. */
export type CrewHoldUp = Extract<HoldUp, { readonly kind: "crew" }>;

/** A hold, a set PET or a window that keeps a step from starting when no crew member and no earlier step does. */
export type ClosedGate = Extract<HoldUp, { readonly kind: "hold" | "notBefore" | "window" }>;

/**
 * What is known of a walk or a plan at one moment, as far as it affects whether a step may start. Steps are positions
 * in the outline.
 */
export interface Situation {
  readonly network: Network;
  /** True when the step is complete at that moment. */
  isComplete(step: number): boolean;
  /** When the step was completed, or is expected to be; `null` when that is unknown. */
  finishOf(step: number): Duration | null;
  /**
   * The first and the last step that a lane has yet to complete before it reaches `step`; `null` when it has reached
   * it.
   */
  openBefore(lane: number, step: number): { readonly first: number; readonly last: number } | null;
  /** True when a predecessor named by `after` affects when the step starts. */
  counts(predecessor: number, lag: Duration): boolean;
  /**
   * The decision that the step depends on and that has not been taken, with the expected time if it is known; `null`
   * when there is none.
   */
  undecided(entry: OutlineStep): { readonly decision: DecisionId; readonly until: Duration | null } | null;
  /**
   * The hold, set PET or window that is in the way once everything else allows the step. Called only when no crew member is waited
   * for.
   */
  closedGate(step: number): ClosedGate | null;
}

/**
 * Everything that keeps a step from starting at the moment of a situation ([PLN3], [WLK3]): first the crew members
 * whose steps are not complete, then lags that are still running, then a hold, a set PET or a window. Empty when the step may
 * start. Plan, forecast, walk and review all take the reason for a wait from here.
 */
export function holdUpsOf(situation: Situation, step: number, at: Duration): readonly HoldUp[] {
  const { network } = situation;
  const entry = network.outline.steps[step];
  if (!entry) return [];
  const crew = crewHoldUps(situation, entry);
  const lags: Extract<HoldUp, { kind: "lag" }>[] = [];
  for (const { from, lag, because } of network.before[step] ?? []) {
    const finish = situation.finishOf(from);
    const predecessor = network.outline.steps[from]?.step.id;
    if (because !== "after" || lag <= 0 || finish === null || predecessor === undefined) continue;
    if (!situation.isComplete(from) || !situation.counts(from, lag)) continue;
    const until = plus(finish, lag);
    if (until > at) lags.push({ kind: "lag", step: predecessor, until });
  }
  const gate = crew.length > 0 ? null : situation.closedGate(step);
  return gate ? [...crew, ...lags, gate] : [...crew, ...lags];
}

/**
 * First the performers who have not reached the step, then the performers of predecessors that are not complete, then
 * the crew members who have yet to decide.
 */
export function crewHoldUps(situation: Situation, entry: OutlineStep): readonly CrewHoldUp[] {
  const { outline, before } = situation.network;
  const found: CrewHoldUp[] = [];
  const idOf = (step: number) => outline.steps[step]?.step.id as StepId;
  const add = (lanes: readonly number[], more: Omit<CrewHoldUp, "kind" | "crew">) => {
    for (const lane of lanes) {
      const crew = outline.crew[lane]?.id;
      if (crew === undefined) continue;
      const isKnown = found.some(
        (one) =>
          one.crew === crew && one.step === more.step && one.last === more.last && one.lag === more.lag,
      );
      if (!isKnown) found.push({ kind: "crew", crew, ...more });
    }
  };
  for (const lane of entry.performers) {
    const open = situation.openBefore(lane, entry.index);
    if (!open) continue;
    const until = situation.finishOf(open.last);
    add([lane], { step: idOf(open.first), last: idOf(open.last), until, lag: NO_TIME });
  }
  for (const { from, lag, because } of before[entry.index] ?? []) {
    if (because !== "after" || situation.isComplete(from) || !situation.counts(from, lag)) continue;
    const until = situation.finishOf(from);
    add(outline.steps[from]?.performers ?? [], { step: idOf(from), last: idOf(from), until, lag });
  }
  const open = situation.undecided(entry);
  const madeBy = open && outline.decision(open.decision)?.madeBy;
  if (madeBy) {
    const { id } = madeBy.step;
    add(madeBy.performers, { step: id, last: id, until: open.until, lag: NO_TIME });
  }
  return found;
}
