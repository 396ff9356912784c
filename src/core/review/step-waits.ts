import type { CrewId, DecisionId, Duration, Instant } from "../units/index.ts";
import { between, later } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import type { ActualWait, ActualWaitOn } from "./review.ts";

/** A step as it was really done, by instants. */
export interface Doing {
  readonly index: number;
  readonly start: Instant;
  readonly finish: Instant;
}

/** The gaps of one lane: before which step, from when to when. */
export interface Gap {
  readonly lane: number;
  readonly index: number;
  readonly from: Instant;
  readonly to: Instant;
}

/** The steps each lane really did, in the order of their starts. */
export function doingsOf(ledger: Ledger, working: readonly Doing[]): Doing[][] {
  const done = ledger.steps.flatMap(({ status, start, finish }, index): Doing[] =>
    status === "done" && start !== null && finish !== null ? [{ index, start, finish }] : [],
  );
  const byLane: Doing[][] = ledger.opened.outline.crew.map(() => []);
  for (const doing of [...done, ...working]) {
    for (const lane of ledger.opened.outline.steps[doing.index]?.performers ?? []) byLane[lane]?.push(doing);
  }
  for (const doings of byLane)
    doings.sort((a, b) => a.start - b.start || a.finish - b.finish || a.index - b.index);
  return byLane;
}

/** The times at which a lane had no step in work, from PET 0 on, each before the step that ended it. */
export function gapsOf(doings: readonly Doing[], lane: number, petZero: Instant): Gap[] {
  const gaps: Gap[] = [];
  let free = petZero;
  for (const { index, start, finish } of doings) {
    if (start > free) gaps.push({ lane, index, from: free, to: start });
    if (finish > free) free = finish;
  }
  return gaps;
}

/** The predecessor that let a step go last, and when. */
interface Release {
  readonly at: Instant;
  /** What a crew member waited for by it; `null` when that was nothing but a step of its own, skipped. */
  readonly on: (self: CrewId) => ActualWaitOn | null;
}

/** When performers and predecessors let a step go as things really went, and which of them last ([PLN3]). */
function releaseOf(
  ledger: Ledger,
  index: number,
  byLane: readonly (readonly Doing[])[],
  petZero: Instant,
): Release {
  const { outline } = ledger.opened;
  const entry = outline.steps[index];
  let release: Release = { at: petZero, on: () => null };
  const consider = (from: number, at: Instant, lag: boolean) => {
    const predecessor = outline.steps[from]?.step;
    if (!predecessor || at <= release.at) return;
    const on = (self: CrewId): ActualWaitOn | null => {
      if (lag) return { lag: predecessor.id };
      const crew = predecessor.by.filter((other) => other !== self);
      return crew.length > 0 ? { crew, step: predecessor.id } : null;
    };
    release = { at, on };
  };
  const start = ledger.steps[index]?.start ?? Number.MAX_SAFE_INTEGER;
  for (const lane of entry?.performers ?? []) {
    for (const doing of byLane[lane] ?? []) {
      if (doing.index !== index && doing.finish <= start) consider(doing.index, doing.finish, false);
    }
  }
  for (const { from, lag, because } of ledger.network.before[index] ?? []) {
    const finish = ledger.steps[from]?.finish;
    if (finish == null) continue;
    const lets = later(finish, lag);
    // A predecessor completed too late (out of order) did not let the step go.
    if (lets <= start) consider(from, lets, because === "after" && lag > 0);
  }
  for (const decision of Object.keys(entry?.step.when ?? {}) as DecisionId[]) {
    const decided = ledger.decidedAt.get(decision);
    const madeBy = outline.decision(decision)?.madeBy.index;
    if (decided !== undefined && madeBy !== undefined && decided <= start) consider(madeBy, decided, false);
  }
  return release;
}

/**
 * What a gap before a step was: first the wait for what let the step go last, then holds, then a window of the step.
 * What is left nobody was waited for: the crew member was idle.
 */
export function waitsIn(
  ledger: Ledger,
  { lane, index, from, to }: Gap,
  byLane: readonly (readonly Doing[])[],
  petZero: Instant,
): ActualWait[] {
  const { outline } = ledger.opened;
  const crew = outline.crew[lane]?.id;
  if (crew === undefined) return [];
  const waits: ActualWait[] = [];
  const add = (start: Instant, end: Instant, on: ActualWaitOn) => {
    if (end > start) waits.push({ crew, time: between(start, end), on });
  };
  const release = releaseOf(ledger, index, byLane, petZero);
  const released = clamp(release.at, from, to);
  const on = release.on(crew);
  if (on) add(from, released, on);
  let at = on ? released : from;
  for (const hold of ledger.holds) {
    const [start, end] = [clamp(hold.from, at, to), clamp(hold.until ?? to, at, to)];
    if (end <= start) continue;
    add(start, end, { hold: true });
    at = end;
  }
  const opens = windowOpening(ledger, index, at, to, petZero);
  if (opens) add(at, clamp(opens.at, at, to), { window: opens.window });
  return waits;
}

const clamp = (value: Instant, low: Instant, high: Instant): Instant =>
  value < low ? low : value > high ? high : value;

/** The span of one of the step's windows that opened last in a gap and holds the step's start; `null` when none did. */
function windowOpening(
  ledger: Ledger,
  index: number,
  from: Instant,
  to: Instant,
  petZero: Instant,
): { readonly window: string; readonly at: Instant } | null {
  let last: { window: string; at: Instant } | null = null;
  const start = between(petZero, to);
  for (const window of ledger.opened.outline.steps[index]?.step.within ?? []) {
    const span = ledger.windows.get(window)?.find((one) => one.from <= start && start <= one.to);
    const at = span && later(petZero, span.from);
    if (at !== undefined && at > from && (last === null || at > last.at)) last = { window, at };
  }
  return last;
}

/** The time that some doings take together, those at the same time counted once. */
export function unionOf(doings: readonly Doing[]): Duration {
  let total = 0;
  let covered = Number.NEGATIVE_INFINITY;
  for (const { start, finish } of [...doings].sort((a, b) => a.start - b.start)) {
    if (finish <= covered) continue;
    total += finish - Math.max(start, covered);
    covered = finish;
  }
  return total as Duration;
}
