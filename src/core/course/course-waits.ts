import { group } from "d3-array";
import type { CrewId, DecisionId, Duration, StepId, WindowId } from "../units/index.ts";
import { NO_TIME, plus } from "../units/index.ts";
import { closedWindowAt } from "../window/index.ts";
import type { Course, CourseStep } from "./course.ts";
import { lanesInTime } from "./course.ts";
import type { ClosedGate, HoldUp, Situation } from "./hold-ups.ts";
import { holdUpsOf } from "./hold-ups.ts";

/**
 * What somebody waits for: other crew members (with the step whose completion ends the wait), a lag after a step, a
 * window, the PET before which the step does not start, or a hold.
 */
export type WaitOn =
  | { readonly crew: readonly CrewId[]; readonly step: StepId }
  | { readonly lag: StepId }
  | { readonly window: WindowId }
  | { readonly notBefore: Duration }
  | { readonly hold: true };

/** A time, longer than zero, during which a crew member is idle before a step, in PET. */
export interface Wait {
  readonly crew: CrewId;
  /** The step that cannot start yet. */
  readonly step: StepId;
  readonly from: Duration;
  readonly to: Duration;
  /** `null` when nothing kept the step from starting. */
  readonly on: WaitOn | null;
}

const known = new WeakMap<Course, readonly Wait[]>();

/**
 * Every wait of a course ([PLN3]), lane by lane and in order of time. A wait is the gap in a lane between one step and
 * the next, divided where its reason changes. While predecessors hold the step back, the reason is the predecessor that
 * does so longest, its lag included: first its performers until it is complete, then the lag. The time after that
 * belongs to a hold while one is in force, then to the PET before which the step does not start, and otherwise to a
 * window. Skipped steps end no wait.
 */
export function waitsOf(course: Course): readonly Wait[] {
  const kept = known.get(course);
  if (kept) return kept;
  const lanes = lanesInTime(course);
  const waits = lanes.flatMap((lane, index) => {
    const crew = course.outline.crew[index]?.id;
    const found: Wait[] = [];
    let free: Duration = NO_TIME;
    for (const next of lane) {
      if (next.stage === "skipped" || crew === undefined) continue;
      if (next.start > free) found.push(...dividedWait({ course, lanes, crew, next }, free));
      if (next.finish > free) free = next.finish;
    }
    return found;
  });
  known.set(course, waits);
  return waits;
}

const knownBySteps = new WeakMap<Course, ReadonlyMap<StepId, readonly Wait[]>>();

/** The waits before one step: for each performer, in the order of `by`, that performer's waits in order of time. */
export function waitsBefore(course: Course, step: StepId): readonly Wait[] {
  const bySteps = knownBySteps.get(course) ?? group(waitsOf(course), (wait) => wait.step);
  knownBySteps.set(course, bySteps);
  const own = bySteps.get(step) ?? [];
  const by = course.outline.step(step)?.step.by ?? [];
  return own.length > 1 ? own.toSorted((a, b) => by.indexOf(a.crew) - by.indexOf(b.crew)) : own;
}

type Lanes = ReturnType<typeof lanesInTime>;

/** A crew member who waits before a step. */
interface Waiting {
  readonly course: Course;
  readonly lanes: Lanes;
  readonly crew: CrewId;
  readonly next: CourseStep;
}

function dividedWait(waiting: Waiting, free: Duration): Wait[] {
  const { crew, next } = waiting;
  const waits: Wait[] = [];
  for (let at = free; at < next.start; ) {
    const { on, until } = bindingAt(waiting, at);
    const to = until < next.start ? until : next.start;
    waits.push({ crew, step: next.step, from: at, to, on });
    at = to;
  }
  return waits;
}

/** The reason why a crew member waits at a PET, and the PET until which it lasts. */
function bindingAt(waiting: Waiting, at: Duration): { readonly on: WaitOn | null; readonly until: Duration } {
  const { course, crew, next } = waiting;
  const index = course.outline.step(next.step)?.index ?? -1;
  const holdUps = holdUpsOf(situationAt(waiting, at), index, at);
  const last = holdUps
    .flatMap((one) => bindingsOf(course, crew, one))
    .reduce<Binding | null>((most, one) => (most && !isLater(one, most) ? most : one), null);
  if (last) return last;
  const gate = holdUps.find(({ kind }) => kind === "hold" || kind === "notBefore" || kind === "window");
  const nextHold = course.holds.find(({ start }) => start > at)?.start ?? next.start;
  if (gate?.kind === "hold") return { on: { hold: true }, until: gate.until ?? next.start };
  if (gate?.kind !== "notBefore" && gate?.kind !== "window") return { on: null, until: nextHold };
  const on = gate.kind === "window" ? { window: gate.window } : { notBefore: gate.until };
  return { on, until: gate.until < nextHold ? gate.until : nextHold };
}

/** A predecessor that holds a step back until it is complete and its lag has passed. */
interface Binding {
  readonly on: WaitOn;
  readonly until: Duration;
  /** When it releases the step, its lag included. */
  readonly lets: Duration;
  /** The predecessor's position in reading order. */
  readonly place: number;
}

/**
 * True when `one` releases the step later than `other`. At equal times the one that is first in reading order wins
 * ([PLN2]).
 */
function isLater(one: Binding, other: Binding): boolean {
  return one.lets > other.lets || (one.lets === other.lets && one.place < other.place);
}

function bindingsOf({ outline }: Course, self: CrewId, holdUp: HoldUp): readonly Binding[] {
  if (holdUp.kind === "lag") {
    const place = outline.step(holdUp.step)?.index ?? -1;
    return [{ on: { lag: holdUp.step }, until: holdUp.until, lets: holdUp.until, place }];
  }
  if (holdUp.kind !== "crew" || holdUp.until === null) return [];
  const { last, until, lag } = holdUp;
  const ends = outline.step(last);
  const others = (ends?.step.by ?? []).filter((one) => one !== self);
  if (!ends || others.length === 0) return [];
  return [{ on: { crew: others, step: last }, until, lets: plus(until, lag), place: ends.index }];
}

/**
 * The situation at a moment before a step of a course starts, seen by one of the crew members who wait. Only what
 * released the step by the time it actually started counts: a predecessor that was completed later, out of order, kept
 * nobody waiting. A skipped step of the waiting crew member's own does not count either.
 */
function situationAt({ course, lanes, crew, next }: Waiting, at: Duration): Situation {
  const { outline, network, steps, decided } = course;
  const isOwn = (step: StepId | undefined) =>
    outline.step(step ?? "")?.step.by.every((one) => one === crew) ?? true;
  const stepAt = (index: number) => steps.get(outline.steps[index]?.step.id as StepId);
  const isComplete = (index: number) => {
    const step = stepAt(index);
    // A step that is not in the course holds nobody back.
    return step === undefined || step.finish <= at;
  };
  const finishOf = (index: number) => stepAt(index)?.finish ?? null;
  return {
    network,
    isComplete,
    finishOf,
    openBefore: (lane, index) => {
      // Of the skipped steps only the one directly before counts. The others do not hold this step back, whenever they
      // were skipped.
      const isNeighbour = (one: CourseStep) =>
        network.before[index]?.some(({ from }) => outline.steps[from]?.step.id === one.step);
      const all = lanes[lane] ?? [];
      const open = all
        .slice(0, all.indexOf(next))
        .filter(
          (one) =>
            one.finish > at &&
            one.finish <= next.start &&
            !isOwn(one.step) &&
            (one.stage !== "skipped" || isNeighbour(one)),
        );
      const indexOf = (one: CourseStep | undefined) => outline.step(one?.step ?? "")?.index ?? -1;
      const last = open.reduce<CourseStep | undefined>(
        (most, one) => (most && most.finish >= one.finish ? most : one),
        undefined,
      );
      return last ? { first: indexOf(open[0]), last: indexOf(last) } : null;
    },
    counts: (predecessor, lag) => {
      const step = stepAt(predecessor);
      if (!step || plus(step.finish, lag) > next.start) return false;
      return step.finish <= at || !isOwn(step.step);
    },
    undecided: ({ step }) => {
      for (const decision of Object.keys(step.when ?? {}) as DecisionId[]) {
        const until = decided.get(decision);
        const madeBy = outline.decision(decision)?.madeBy.step.id;
        if (until !== undefined && until > at && until <= next.start && !isOwn(madeBy))
          return { decision, until };
      }
      return null;
    },
    closedGate: () => closedGateAt(course, next, at),
  };
}

/**
 * The hold in force at a PET. Without one, the PET before which the step does not start, and after that the window that
 * keeps it from starting, by its likely duration. A step that did start before its PET did not wait for it.
 */
function closedGateAt(course: Course, next: CourseStep, at: Duration): ClosedGate | null {
  const { outline, holds, windows, whereabouts } = course;
  const hold = holds.find(({ start, finish }) => start <= at && (finish === null || at < finish));
  if (hold) return { kind: "hold", since: hold.start, until: hold.finish };
  const entry = outline.step(next.step);
  if (!entry) return null;
  const { notBefore } = entry.step;
  if (notBefore !== undefined && notBefore > at && notBefore <= next.start)
    return { kind: "notBefore", until: notBefore };
  const likely = whereabouts.times[entry.index]?.likely ?? NO_TIME;
  const closed = closedWindowAt(at, likely, entry.step.within, windows);
  return closed && { kind: "window", ...closed };
}
