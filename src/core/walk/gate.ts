import { earliestFit } from "../plan/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, DecisionId, Duration, Instant, StepId, WindowId } from "../units/index.ts";
import { between, later } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";

/** A crew member who holds a step up, and the step it has yet to complete. */
export interface Blocker {
  readonly crew: CrewId;
  readonly step: StepId;
}

/** What a step that has not been completed waits for ([WLK3]). */
export interface Gate {
  /** Performers who have not arrived, and performers of predecessors that are not complete; each pair once. */
  readonly blockers: readonly Blocker[];
  /** When performers and predecessors, lags included, let the step start; `null` while there are blockers. */
  readonly ready: Instant | null;
  /** The lags of complete predecessors, with the time each ends. */
  readonly lags: readonly { readonly step: StepId; readonly until: Instant }[];
}

/** The decision a step's `when` needs that has not been taken; `null` when all are. */
export function undecided(ledger: Ledger, entry: OutlineStep): DecisionId | null {
  const names = Object.keys(entry.step.when ?? {}) as DecisionId[];
  return names.find((name) => !ledger.outcomes.has(name)) ?? null;
}

/** The step a lane has come to (reading order index); `null` when all its steps are complete. */
export function stepOfLane(ledger: Ledger, lane: number): number | null {
  return ledger.network.lanes[lane]?.[ledger.lanes[lane]?.next ?? 0] ?? null;
}

/** What an open, active step waits for. The clock must have been started. */
export function gateOf(ledger: Ledger, index: number): Gate {
  const { outline } = ledger.opened;
  const entry = outline.steps[index];
  const blockers: Blocker[] = [];
  const lags: { step: StepId; until: Instant }[] = [];
  let ready = ledger.petZero ?? ledger.opened.at;
  const block = (lane: number, by: number) => {
    const crew = outline.crew[lane]?.id;
    const step = outline.steps[by]?.step.id;
    if (crew === undefined || step === undefined) return;
    if (!blockers.some((one) => one.crew === crew && one.step === step)) blockers.push({ crew, step });
  };
  for (const lane of entry?.performers ?? []) {
    const at = stepOfLane(ledger, lane);
    if (at !== null && at !== index) block(lane, at);
    const free = ledger.lanes[lane]?.free;
    if (free != null && free > ready) ready = free;
  }
  for (const { from, lag, because } of ledger.network.before[index] ?? []) {
    if (because !== "after") continue;
    const progress = ledger.steps[from];
    const predecessor = outline.steps[from];
    if (!isComplete(ledger, from)) {
      for (const lane of predecessor?.performers ?? []) block(lane, from);
    } else if (progress?.finish != null && predecessor) {
      const until = later(progress.finish, lag);
      if (lag > 0) lags.push({ step: predecessor.step.id, until });
      if (until > ready) ready = until;
    }
  }
  for (const name of Object.keys(entry?.step.when ?? {}) as DecisionId[]) {
    const decided = ledger.decidedAt.get(name);
    if (decided !== undefined && decided > ready) ready = decided;
  }
  const decision = entry ? undecided(ledger, entry) : null;
  const madeBy = decision === null ? null : outline.decision(decision)?.madeBy;
  if (madeBy) for (const lane of madeBy.performers) block(lane, madeBy.index);
  return { blockers, ready: blockers.length === 0 ? ready : null, lags };
}

/** When a step may start, once performers and predecessors let it. */
export interface Opening {
  readonly at: Instant;
  /** The window that puts the start off; `null` when none does. */
  readonly window: WindowId | null;
  /** True when the start waits for the hold in force to be lifted; `at` is then the earliest it could be. */
  readonly held: boolean;
}

/** When a step may start from `ready` on: not during a hold, and wholly in its windows. `null` when no span fits any more. */
export function openingOf(ledger: Ledger, index: number, ready: Instant): Opening | null {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const within = ledger.opened.outline.steps[index]?.step.within ?? [];
  const length = ledger.whereabouts.times[index]?.likely ?? (0 as Duration);
  let at = ready;
  let window: WindowId | null = null;
  for (;;) {
    const hold = ledger.holds.find(({ from, until }) => at >= from && (until === null || at < until));
    if (hold) {
      if (hold.until === null) return { at, window, held: true };
      at = hold.until;
    }
    const fit = earliestFit(between(petZero, at), length, within, ledger.windows);
    if (!fit) return null;
    const start = later(petZero, fit.start);
    if (start === at) return { at, window, held: false };
    at = start;
    window = fit.bound;
  }
}

/** When an open step started or will start by itself ([WLK2]); `null` while performers or predecessors hold it up, or for ever when no window fits. */
export function startOf(ledger: Ledger, index: number): Opening | null {
  const said = ledger.steps[index]?.saidStart;
  if (said != null) return { at: said, window: null, held: false };
  const { ready } = gateOf(ledger, index);
  return ready === null ? null : openingOf(ledger, index, ready);
}
