import type { Course, Stretch } from "../course/index.ts";
import { isCompleteBy, statesAt } from "../course/index.ts";
import type { Network } from "../order/index.ts";
import type { Ways } from "../place/index.ts";
import { waysOf } from "../place/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { Duration, PlaceId, StepId } from "../units/index.ts";
import { minus, NO_TIME, plus } from "../units/index.ts";
import { earliestFit } from "../window/index.ts";
import type { ReturnBar, Shut } from "./return-bar.ts";
import { returnBarOf } from "./return-bar.ts";
import type { Standing } from "./standing.ts";
import { quickestTo, quickestToRefuge } from "./standing.ts";
import type { Leg } from "./states-home.ts";
import { StatesHome } from "./states-home.ts";
import { notBeforeOf } from "./time-bounds.ts";

/** Somebody whose place is followed on the way in. */
export interface Returning {
  /** Where they are at the moment; `null` when that is not known. */
  standing: Standing | null;
  /** The time they moved before their first closeout step, waits for a way to open included; `null` before it. */
  way: Duration | null;
}

/** When somebody sets out and arrives, and the place that they go to; `null` for whoever stays where they are. */
interface Arrival {
  readonly lane: number;
  readonly leaves: Duration;
  readonly at: Duration;
  readonly to: PlaceId | null;
}

/** When the work is broken off, and how. */
export interface BreakingOff {
  /** The PET of which everything is taken as it is. */
  readonly pet: Duration;
  /** The PET at which the return begins. */
  readonly from: Duration;
  readonly heedsStates: boolean;
  /** The PETs before which closeout steps are not begun; none unless given. */
  readonly putOff?: ReadonlyMap<StepId, Duration>;
}

/** How a closeout step is laid out. */
interface Laid extends Stretch {
  readonly arrivals: readonly Arrival[];
}

/**
 * Schedules the closeout steps that are left by the rules of the plan ([PLN1]), from where everybody is and with the
 * states as they stand when the work is broken off. A step that needs a value waits for the one that sets it.
 */
export class CloseoutRun {
  readonly #course: Course;
  readonly #crew: readonly (Returning | null)[];
  readonly #pet: Duration;
  readonly #from: Duration;
  readonly #states: StatesHome;
  readonly #putOff: ReadonlyMap<StepId, Duration>;
  /** The steps that could not be done, in the order of the network. */
  #stuck: readonly OutlineStep[] = [];
  /** The PET at which each lane has done its last step so far. */
  readonly #free: Duration[];
  readonly steps = new Map<StepId, Stretch>();
  finish: Duration;

  /**
   * The run begins at `from`, with what is complete, and the states as they are, at `pet`. It moves `crew` along. Unless
   * it heeds the states, every way is open and every need is met.
   */
  constructor(
    course: Course,
    crew: readonly (Returning | null)[],
    { pet, from, heedsStates, putOff }: BreakingOff,
  ) {
    this.#course = course;
    this.#crew = crew;
    this.#pet = pet;
    this.#from = from;
    this.#states = new StatesHome(course.outline.procedure, heedsStates ? statesAt(course, pet) : null);
    this.#putOff = putOff ?? new Map();
    this.#free = crew.map(() => from);
    this.finish = from;
  }

  /** Schedules every step that is left; false when one cannot be. */
  all(): boolean {
    const { inOrder, unplaced } = closeoutOf(this.#course.network);
    if (unplaced.some((entry) => this.#isLeft(entry))) return false;
    let left = inOrder.filter((entry) => this.#isLeft(entry));
    while (left.length > 0) {
      const rest = this.#pass(left);
      if (rest.length === left.length) {
        this.#stuck = left;
        return false;
      }
      left = rest;
    }
    return true;
  }

  /**
   * Schedules the steps in turn and returns those that could not be yet. It ends early when a state was set after one
   * could not, which is then first to be tried again.
   */
  #pass(left: readonly OutlineStep[]): OutlineStep[] {
    const blocked: OutlineStep[] = [];
    const waiting = new Set<StepId>();
    const lanes = new Set<number>();
    for (const [position, entry] of left.entries()) {
      const { step, performers } = entry;
      const isBehind =
        performers.some((lane) => lanes.has(lane)) || step.after.some(({ step: id }) => waiting.has(id));
      if (!isBehind && this.#does(entry)) {
        if (step.sets && blocked.length > 0) return [...blocked, ...left.slice(position + 1)];
        continue;
      }
      blocked.push(entry);
      waiting.add(step.id);
      for (const lane of performers) lanes.add(lane);
    }
    return blocked;
  }

  /**
   * When the crew member of a lane is at a refuge after their last step, with the refuge; `null` when no way that is
   * open leads to one from there.
   */
  home(lane: number): { readonly at: Duration; readonly refuge: PlaceId } | null {
    const { standing } = this.#crew[lane] ?? { standing: null };
    if (!standing) return null;
    const found = this.#leaves(this.freeOf(lane), (ways) => quickestToRefuge(standing, ways)?.cost ?? null);
    const last = found && quickestToRefuge(standing, found.ways);
    return found && last && { at: found.finish, refuge: last.place };
  }

  /** When a step was completed before, or is complete on the way home; `null` when it is not done at all. */
  finishOf(step: StepId): Duration | null {
    return this.#completed(step) ?? this.steps.get(step)?.finish ?? null;
  }

  /**
   * The state that bars a run in which not all could be done, or after which the crew members of these lanes do not get
   * to a refuge ([PRO13]); `null` when no state does.
   */
  barredBy(outside: readonly number[]): ReturnBar | null {
    const { outline } = this.#course;
    const shut = this.#stuck.flatMap((entry): Shut[] => [
      { entry, lane: null, standing: null, to: null },
      ...entry.performers.flatMap((lane, seat) => {
        const standing = this.#crew[lane]?.standing;
        if (!standing) return [];
        const begins = this.#beginsAt(entry, seat);
        const from = begins === null ? standing : { place: begins };
        return [
          ...(begins === null ? [] : [{ entry, lane, standing, to: begins }]),
          ...(entry.step.to === undefined ? [] : [{ entry, lane, standing: from, to: entry.step.to }]),
        ];
      }),
    ]);
    const homeless = outside.flatMap((lane): Shut[] => {
      const standing = this.#crew[lane]?.standing;
      return standing && this.home(lane) === null ? [{ entry: null, lane, standing, to: null }] : [];
    });
    return returnBarOf(
      outline,
      this.#stuck.length > 0 ? shut : homeless,
      (needs) => this.#states.unmetAtLast(needs),
      (entry) => ({
        isActive: this.#course.network.activity.active[entry.index] === true,
        isLeft: this.#isLeft(entry),
        isDone: this.#completed(entry.step.id) !== null,
      }),
    );
  }

  /** When the crew member of a lane has done their last step so far. */
  freeOf(lane: number): Duration {
    return this.#free[lane] ?? this.#from;
  }

  #isLeft({ step, task }: OutlineStep): boolean {
    return task.closeout && this.#completed(step.id) === null;
  }

  /** When a step was completed; `null` when it is not complete at the moment of breaking off. */
  #completed(id: StepId): Duration | null {
    const step = this.#course.steps.get(id);
    return step && isCompleteBy(this.#course, step, this.#pet) ? step.finish : null;
  }

  #does(entry: OutlineStep): boolean {
    const laid = this.#laid(entry);
    if (!laid) return false;
    const { step, performers } = entry;
    const { start, finish, arrivals } = laid;
    for (const { lane, leaves, at, to } of arrivals) {
      const returning = this.#crew[lane];
      if (!returning) continue;
      const { standing } = returning;
      returning.way ??= minus(at, this.freeOf(lane));
      if (to === null) continue;
      // Whoever is there already relies on no way.
      if (standing && !isAt(standing, to))
        this.#states.moved({ start: leaves, finish: at }, (ways) => quickestTo(standing, to, ways));
      returning.standing = { place: to };
    }
    if (step.to !== undefined) this.#states.moved(laid, (ways) => this.#length(entry, ways));
    this.#states.did({ start, finish }, step.needs ?? {}, step.sets ?? {});
    this.steps.set(step.id, { start, finish });
    for (const lane of performers) {
      this.#free[lane] = finish;
      const returning = this.#crew[lane];
      if (returning && step.to !== undefined) returning.standing = { place: step.to };
    }
    if (finish > this.finish) this.finish = finish;
    return true;
  }

  /** The earliest time of a step; `null` when it cannot be done, or not before something else has set a state. */
  #laid(entry: OutlineStep): Laid | null {
    const { step, performers } = entry;
    const arrivals: Arrival[] = [];
    let ready = this.#ready(entry);
    for (const [seat, lane] of performers.entries()) {
      const arrival = this.#arrives(entry, seat, lane);
      if (arrival === null) return null;
      arrivals.push(arrival);
      if (arrival.at > ready) ready = arrival.at;
    }
    const standingOf = (lane: number): Standing | null => {
      const to = arrivals.find((one) => one.lane === lane)?.to ?? null;
      return to === null ? (this.#crew[lane]?.standing ?? null) : { place: to };
    };
    for (;;) {
      const next = this.#fits(entry, ready, standingOf);
      if (next === null) return null;
      const finish = plus(next.start, next.length);
      const least = this.#states.mayBeSetFrom(step.sets ?? {});
      if (finish >= least) return { start: next.start, finish, arrivals };
      ready = plus(next.start, minus(least, finish));
    }
  }

  /**
   * The start from `ready` on, let by its states and windows, from which a step is over first, and how long it takes
   * then: on a way that is open, or on a quicker one once that opens.
   */
  #fits(entry: OutlineStep, ready: Duration, standingOf: (lane: number) => Standing | null) {
    let first: { readonly start: Duration; readonly length: Duration } | null = null;
    for (const moment of this.#states.momentsFrom(ready)) {
      if (first && moment >= plus(first.start, first.length)) break;
      const fit = this.#fitsAfter(entry, moment, standingOf);
      if (fit && (!first || plus(fit.start, fit.length) < plus(first.start, first.length))) first = fit;
    }
    return first;
  }

  /** The start at a moment, put off by windows alone; `null` when the states do not let it start then. */
  #fitsAfter(entry: OutlineStep, moment: Duration, standingOf: (lane: number) => Standing | null) {
    const { step } = entry;
    for (let at = moment; this.#states.letsStart(step, at); ) {
      const length = this.#lengthFrom(entry, at, standingOf);
      const fit = length === null ? null : earliestFit(at, length, step.within, this.#course.windows);
      if (length === null || !fit) return null;
      if (fit.start === at) return { start: at, length };
      at = fit.start;
    }
    return null;
  }

  /** How long a step takes that begins at a PET; `null` where the ways that are open then do not lead there. */
  #lengthFrom(
    entry: OutlineStep,
    start: Duration,
    standingOf: (lane: number) => Standing | null,
  ): Duration | null {
    if (entry.step.to === undefined) return this.#likely(entry);
    return this.#states.openFrom(start, (ways) => this.#length(entry, ways, standingOf))?.time ?? null;
  }

  #likely({ index }: OutlineStep): Duration {
    return this.#course.whereabouts.times[index]?.likely ?? NO_TIME;
  }

  /** When what a step comes `after` lets it start. What is left out lets it start at once. */
  #ready(entry: OutlineStep): Duration {
    const { outline, network } = this.#course;
    const { index } = entry;
    const notBefore = notBeforeOf(entry);
    let ready = notBefore > this.#from ? notBefore : this.#from;
    const putOff = this.#putOff.get(entry.step.id);
    if (putOff !== undefined && putOff > ready) ready = putOff;
    for (const { from, lag, because } of network.before[index] ?? []) {
      const before = outline.steps[from]?.step.id;
      if (because !== "after" || before === undefined) continue;
      const done = this.#completed(before) ?? this.steps.get(before)?.finish;
      if (done !== undefined && plus(done, lag) > ready) ready = plus(done, lag);
    }
    return ready;
  }

  /**
   * When a performer is where a step begins: at its `at`; without one, where the plan has that performer for it. A
   * translation without `at` begins wherever they are. Returns `null` when no way that is open leads there.
   */
  #arrives(entry: OutlineStep, seat: number, lane: number): Arrival | null {
    const free = this.freeOf(lane);
    const returning = this.#crew[lane];
    if (!returning) return { lane, leaves: free, at: free, to: null };
    const target = this.#beginsAt(entry, seat);
    if (target === null) return { lane, leaves: free, at: free, to: null };
    const { standing } = returning;
    if (standing && isAt(standing, target)) return { lane, leaves: free, at: free, to: target };
    const found = standing && this.#leaves(free, (ways) => quickestTo(standing, target, ways));
    return found && { lane, leaves: found.start, at: found.finish, to: target };
  }

  #beginsAt({ index, step }: OutlineStep, seat: number): PlaceId | null {
    const planned = this.#course.whereabouts.from[index]?.[seat] ?? null;
    return step.at ?? (step.to === undefined ? planned : null);
  }

  /** The move that is over first of those that begin at `free` or when a state has changed; `null` without a way. */
  #leaves(free: Duration, timeBy: (ways: Ways) => Duration | null) {
    let first: (Leg & { readonly ways: Ways }) | null = null;
    for (const start of this.#states.momentsFrom(free)) {
      if (first && start >= first.finish) break;
      const open = this.#states.openFrom(start, timeBy);
      if (open && (!first || plus(start, open.time) < first.finish))
        first = { start, finish: plus(start, open.time), ways: open.ways };
    }
    return first;
  }

  /**
   * How long a step takes. A translation takes the quickest way from where each performer is, or the time written where
   * that is longer. Where no routes at all lead from the place the plan has it begin at, the time written counts.
   * Returns `null` when neither tells, or when those ways are closed.
   */
  #length(
    entry: OutlineStep,
    ways: Ways,
    standingOf = (lane: number) => this.#crew[lane]?.standing ?? null,
  ): Duration | null {
    const { index, step, performers } = entry;
    const { to, time } = step;
    if (to === undefined) return this.#likely(entry);
    const all = waysOf(this.#course.outline.procedure);
    let longest = time?.likely ?? NO_TIME;
    for (const [seat, lane] of performers.entries()) {
      if (!this.#crew[lane]) continue;
      const standing = standingOf(lane);
      const way = standing && quickestTo(standing, to, ways);
      const planned = this.#course.whereabouts.from[index]?.[seat];
      const isAsPlanned = standing !== null && "place" in standing && standing.place === planned;
      const isClosed = standing !== null && quickestTo(standing, to, all) !== null;
      if (way === null && (isClosed || !(isAsPlanned && time))) return null;
      if (way !== null && way > longest) longest = way;
    }
    return longest;
  }
}

/** The closeout steps of a network. */
interface Closeout {
  readonly inOrder: readonly OutlineStep[];
  /** Those that a deadlock keeps out of the order. */
  readonly unplaced: readonly OutlineStep[];
}

const knownCloseout = new WeakMap<Network, Closeout>();

/** The closeout steps of a network. Cached for each, since a return is planned from every step. */
function closeoutOf(network: Network): Closeout {
  const kept = knownCloseout.get(network);
  if (kept) return kept;
  const { outline, order, activity } = network;
  const placed = new Set(order);
  const closeout: Closeout = {
    inOrder: order.flatMap((index) => {
      const entry = outline.steps[index];
      return entry?.task.closeout ? [entry] : [];
    }),
    unplaced: outline.steps.filter(
      ({ index, task }) => task.closeout && activity.active[index] && !placed.has(index),
    ),
  };
  knownCloseout.set(network, closeout);
  return closeout;
}

const isAt = (standing: Standing, place: PlaceId): boolean => "place" in standing && standing.place === place;
