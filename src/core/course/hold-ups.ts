import type { Network } from "../order/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, DecisionId, Duration, StepId, WindowId } from "../units/index.ts";
import { NO_TIME, plus } from "../units/index.ts";

/** Something that keeps a step from starting, and until when (PET); `null` when that is not known. */
export type HoldUp =
  | {
      /** Somebody who has yet to complete `step`; `last` is the step whose completion ends this hold-up. */
      readonly kind: "crew";
      readonly crew: CrewId;
      readonly step: StepId;
      readonly last: StepId;
      readonly until: Duration | null;
      /** How long after that the step may start at the earliest. */
      readonly lag: Duration;
    }
  | { readonly kind: "lag"; readonly step: StepId; readonly until: Duration }
  | { readonly kind: "hold"; readonly since: Duration; readonly until: Duration | null }
  | { readonly kind: "window"; readonly window: WindowId; readonly until: Duration };

/** Somebody who keeps a step from starting. */
export type CrewHoldUp = Extract<HoldUp, { readonly kind: "crew" }>;

/** A hold or a window that keeps a step from starting though everybody and everything before it lets it. */
export type ClosedGate = Extract<HoldUp, { readonly kind: "hold" | "window" }>;

/** What is known of a walk or a plan at one moment, as far as it bears on whether a step may start. Steps are positions in the outline. */
export interface Situation {
  readonly network: Network;
  /** True when the step is complete at that moment. */
  isComplete(step: number): boolean;
  /** When the step is complete, or is expected to be; `null` when that is not known. */
  finishOf(step: number): Duration | null;
  /** The first and the last step that a lane has yet to complete before it comes to `step`; `null` when it has come to it. */
  openBefore(lane: number, step: number): { readonly first: number; readonly last: number } | null;
  /** Whether a predecessor named by `after` has to do with when the step starts. */
  counts(predecessor: number, lag: Duration): boolean;
  /** The decision on which the step hangs and that has not been taken, with when it will be as far as known; `null` when there is none. */
  undecided(entry: OutlineStep): { readonly decision: DecisionId; readonly until: Duration | null } | null;
  /** The hold or window that is closed once everything before the step lets it; asked only when nobody is waited for. */
  closedGate(step: number): ClosedGate | null;
}

/**
 * Everything that keeps a step from starting at the moment of a situation ([PLN3], [WLK3]): first the crew members whose
 * steps are not complete, then lags that run, then a hold or a window. Empty when the step may start. This is the one
 * account of why somebody waits; plan, forecast, walk and review all read it.
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

/** Performers who have not come to the step, then performers of predecessors that are not complete, then whoever has to decide. */
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
