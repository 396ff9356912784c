import type { ClosedGate, CrewHoldUp, Situation } from "../course/index.ts";
import { crewHoldUps } from "../course/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { DecisionId, Duration, Instant, StepId, WindowId } from "../units/index.ts";
import { between, later } from "../units/index.ts";
import { earliestFit } from "../window/index.ts";
import type { Hold, Ledger } from "./ledger.ts";
import { isComplete, progressOf } from "./ledger.ts";

/** The decision a step's `when` needs that has not been taken; `null` when all are. */
export function undecided(ledger: Ledger, entry: OutlineStep): DecisionId | null {
  if (!entry.step.when) return null;
  const names = Object.keys(entry.step.when) as DecisionId[];
  return names.find((name) => !ledger.outcomes.has(name)) ?? null;
}

/** The step a lane has come to; `null` when all its steps are complete. */
export function stepOfLane(ledger: Ledger, lane: number): OutlineStep | null {
  const next = ledger.lanes[lane]?.next ?? null;
  return next === null ? null : ledger.inForce.outline.step(next);
}

/** What the entries so far say of whether steps may start. Nothing is known of when open steps will be complete. */
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
    const decision = undecided(this.ledger, entry);
    return decision === null ? null : { decision, until: null };
  }

  closedGate(_step: number): ClosedGate | null {
    return null;
  }

  #idOf(step: number): StepId {
    return this.network.outline.steps[step]?.step.id as StepId;
  }
}

/** Who holds up an open, active step: performers who have not come to it, and performers of predecessors that are not complete. */
export function blockersOf(ledger: Ledger, entry: OutlineStep): readonly CrewHoldUp[] {
  return crewHoldUps(new LedgerSituation(ledger), entry);
}

/** When performers and predecessors, lags included, let a step start on which nobody is waited for. */
export function readyAt(ledger: Ledger, { index, step, performers }: OutlineStep): Instant {
  const { network, lanes, decidedAt } = ledger;
  let ready = ledger.petZero ?? ledger.opened.at;
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
  return ready;
}

/** When a step may start, once performers and predecessors let it. */
export interface EarliestStart {
  readonly at: Instant;
  /** The window that puts the start off; `null` when none does. */
  readonly window: WindowId | null;
  /** The hold that is in force then and has yet to be lifted, `at` being the earliest it could start; `null` when there is none. */
  readonly hold: Hold | null;
}

/** When a step may start from `ready` on: not during a hold, and wholly in its windows. `null` when no span fits any more. */
export function earliestStart(ledger: Ledger, entry: OutlineStep, ready: Instant): EarliestStart | null {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const length = ledger.whereabouts.times[entry.index]?.likely ?? (0 as Duration);
  let at = ready;
  let window: WindowId | null = null;
  for (;;) {
    const hold = ledger.holds.find(({ from, until }) => at >= from && (until === null || at < until));
    if (hold) {
      if (hold.until === null) return { at, window, hold };
      // Another hold may have been called by then.
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

/** When an open step started or will start by itself ([WLK2]); `null` while somebody is waited for, or for ever when no window fits. */
export function startOf(ledger: Ledger, entry: OutlineStep): EarliestStart | null {
  const { saidStart } = progressOf(ledger, entry.step.id);
  if (saidStart !== null) return { at: saidStart, window: null, hold: null };
  if (blockersOf(ledger, entry).length > 0) return null;
  return earliestStart(ledger, entry, readyAt(ledger, entry));
}
