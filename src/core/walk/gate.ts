import type { ClosedGate, CrewHoldUp, Situation } from "../course/index.ts";
import { crewHoldUps } from "../course/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { DecisionId, Duration, Instant, StepId, WindowId } from "../units/index.ts";
import { between, later, NO_TIME } from "../units/index.ts";
import { earliestFit } from "../window/index.ts";
import { askedAgainFor } from "./asked-again.ts";
import type { Hold, Ledger } from "./ledger.ts";
import { isComplete, progressOf } from "./ledger.ts";

/** Returns the first decision in a step's `when` that has not been taken, or `null` when all of them have been. */
export function undecided(ledger: Ledger, entry: OutlineStep): DecisionId | null {
  if (!entry.step.when) return null;
  const names = Object.keys(entry.step.when) as DecisionId[];
  return names.find((name) => !ledger.outcomes.has(name)) ?? null;
}

/**
 * Returns the current step of a lane, which is its first step that is not complete, or `null` when all its steps are
 * complete.
 */
export function stepOfLane(ledger: Ledger, lane: number): OutlineStep | null {
  const next = ledger.lanes[lane]?.next ?? null;
  return next === null ? null : ledger.inForce.outline.step(next);
}

/**
 * The situation according to the entries so far, used to tell whether steps may start. It makes no guess about when
 * open steps will be complete.
 */
export class LedgerSituation implements Situation {
  readonly network: Ledger["network"];
  protected readonly ledger: Ledger;

  constructor(ledger: Ledger) {
    this.ledger = ledger;
    this.network = ledger.network;
  }

  isComplete(step: number): boolean {
    return isComplete(this.ledger, this.#idOf(step));
  }

  finishOf(step: number): Duration | null {
    const { finish } = progressOf(this.ledger, this.#idOf(step));
    return finish === null ? null : between(this.ledger.petZero ?? this.ledger.opened.at, finish);
  }

  openBefore(lane: number, step: number): { readonly first: number; readonly last: number } | null {
    const first = stepOfLane(this.ledger, lane)?.index ?? step;
    if (first === step) return null;
    const steps = this.network.lanes[lane] ?? [];
    return { first, last: steps.findLast((one) => one < step && !this.isComplete(one)) ?? first };
  }

  counts(): boolean {
    return true;
  }

  undecided(entry: OutlineStep): { readonly decision: DecisionId; readonly until: Duration | null } | null {
    const decision = undecided(this.ledger, entry) ?? askedAgainFor(this.ledger, entry);
    return decision === null ? null : { decision, until: null };
  }

  closedGate(_step: number): ClosedGate | null {
    return null;
  }

  #idOf(step: number): StepId {
    return this.network.outline.steps[step]?.step.id as StepId;
  }
}

/**
 * Returns who holds up an open, active step: its performers who are still at an earlier step, and the performers of
 * its incomplete predecessors.
 */
export function blockersOf(ledger: Ledger, entry: OutlineStep): readonly CrewHoldUp[] {
  return crewHoldUps(new LedgerSituation(ledger), entry);
}

/**
 * Returns the instant from which performers, predecessors (with lags), decisions and the amendments of the plan allow a
 * step to start. It is only meaningful when nobody holds the step up.
 */
export function readyAt(ledger: Ledger, { index, step, performers }: OutlineStep): Instant {
  const { network, lanes, decidedAt } = ledger;
  let ready = later(ledger.petZero ?? ledger.opened.at, step.notBefore ?? NO_TIME);
  const after = (moment: Instant | null | undefined) => {
    if (moment != null && moment > ready) ready = moment;
  };
  for (const lane of performers) after(lanes[lane]?.free);
  for (const { from, lag, because } of network.before[index] ?? []) {
    const predecessor = network.outline.steps[from]?.step.id;
    if (because !== "after" || predecessor === undefined) continue;
    const { finish } = progressOf(ledger, predecessor);
    if (finish !== null) after(later(finish, lag));
  }
  for (const decision of Object.keys(step.when ?? {}) as DecisionId[]) after(decidedAt.get(decision));
  if (progressOf(ledger, step.id).saidStart === null) after(ledger.notBegunBefore.get(step.id));
  return ready;
}

/** The earliest start of a step that its performers and predecessors allow. */
export interface EarliestStart {
  readonly at: Instant;
  /** The window that delays the start; `null` when no window does. */
  readonly window: WindowId | null;
  /**
   * The hold that blocks the start and has not been lifted; `at` is then only a lower bound. `null` when there is
   * none.
   */
  readonly hold: Hold | null;
}

/**
 * Returns the earliest start of a step at or after `ready` that is not during a hold and keeps the whole step inside
 * its windows. Returns `null` when no remaining span is long enough.
 */
export function earliestStart(ledger: Ledger, entry: OutlineStep, ready: Instant): EarliestStart | null {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const length = ledger.whereabouts.times[entry.index]?.likely ?? (0 as Duration);
  let at = ready;
  let window: WindowId | null = null;
  for (;;) {
    const hold = ledger.holds.find(({ from, until }) => at >= from && (until === null || at < until));
    if (hold) {
      if (hold.until === null) return { at, window, hold };
      // Another hold may be in force at that instant, so check again.
      at = hold.until;
      continue;
    }
    const fit = earliestFit(between(petZero, at), length, entry.step.within, ledger.windows);
    if (!fit) return null;
    const start = later(petZero, fit.start);
    if (start === at) return { at, window, hold: null };
    at = start;
    window = fit.bound;
  }
}

/**
 * Returns when an open step started, or when it will start as time passes ([WLK2]). Returns `null` while the step
 * waits for somebody, or when no window fits it.
 */
export function startOf(ledger: Ledger, entry: OutlineStep): EarliestStart | null {
  const { saidStart } = progressOf(ledger, entry.step.id);
  if (saidStart !== null) return { at: saidStart, window: null, hold: null };
  if (blockersOf(ledger, entry).length > 0) return null;
  return earliestStart(ledger, entry, readyAt(ledger, entry));
}
