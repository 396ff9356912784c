import type { Course, Stretch } from "../course/index.ts";
import { isCompleteBy } from "../course/index.ts";
import { isPlaced, waysOf } from "../place/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, Duration, PlaceId, StepId } from "../units/index.ts";
import { minus, NO_TIME, plus } from "../units/index.ts";
import { earliestFit } from "../window/index.ts";
import type { Standing } from "./standing.ts";
import { quickestTo, quickestToRefuge, standingAt } from "./standing.ts";
import { notBeforeOf } from "./time-bounds.ts";

/** How one crew member outside gets in ([PLN6]). */
export interface CrewReturn {
  readonly crew: CrewId;
  /** Where they are when the work is broken off; on a way, the place it began at. */
  readonly from: PlaceId;
  /** The refuge at the end; `null` when the procedure marks no refuge. */
  readonly refuge: PlaceId | null;
  /** The time they move before their first closeout step, or to a refuge when they have none. */
  readonly way: Duration;
  /** The PET at which they are at a refuge with the last of their closeout steps done. */
  readonly home: Duration;
}

/** The plan of what is left when the work is broken off at a moment ([PLN6]). */
export interface ReturnPlan {
  /** The PET at which the work is broken off. */
  readonly from: Duration;
  /** The PET at which everybody is in and the last closeout step is complete. */
  readonly finish: Duration;
  /** The return time: `finish` − `from`. */
  readonly total: Duration;
  /** Everybody outside, in the order of `crew`. */
  readonly crew: readonly CrewReturn[];
  /** The closeout steps that are left, in the order in which they were scheduled. */
  readonly steps: ReadonlyMap<StepId, Stretch>;
}

const known = new WeakMap<Course, Map<Duration, ReturnPlan | null>>();

/**
 * The return plan of a course when the work is broken off at a PET ([PLN6]); a plan, a forecast and a walk as flown are
 * asked in the same way. Only what the course has up to that PET matters: what is complete, and where everybody is.
 *
 * Returns `null` when it cannot be told: nobody is outside, it is not known where somebody is, no ways with a time lead
 * to a step or to a refuge, steps wait for each other, or a step fits no span of its windows any more.
 */
export function returnPlanAt(course: Course, pet: Duration): ReturnPlan | null {
  const plans = known.get(course) ?? new Map<Duration, ReturnPlan | null>();
  known.set(course, plans);
  const found = plans.get(pet);
  if (found !== undefined) return found;
  const plan = brokenOff(course, pet, pet);
  plans.set(pet, plan);
  return plan;
}

/**
 * The latest PET to turn back so that everybody, or the given crew member, is in by a deadline ([PLN6]): the deadline
 * less the time that takes, below zero when there was never enough time. Where windows would make a return that begins
 * then end after the deadline, it is the latest PET at which one does not, to the second.
 */
export function latestTurnBack(
  course: Course,
  plan: ReturnPlan,
  deadline: Duration,
  crew: CrewId | null = null,
): Duration {
  const latest = minus(deadline, minus(endOf(plan, crew), plan.from));
  if (latest <= plan.from || !isGated(course, plan)) return latest;
  const isInTime = (at: Duration) => {
    const then = brokenOff(course, plan.from, at);
    return then !== null && endOf(then, crew) <= deadline;
  };
  if (isInTime(latest)) return latest;
  let [early, late] = [plan.from, latest];
  while (late - early > SECOND) {
    const middle = Math.floor((early + late) / 2) as Duration;
    if (isInTime(middle)) early = middle;
    else late = middle;
  }
  return early;
}

const SECOND = 1000;

function endOf(plan: ReturnPlan, crew: CrewId | null): Duration {
  return crew === null ? plan.finish : (plan.crew.find((one) => one.crew === crew)?.home ?? plan.finish);
}

/** True when a window, or the clock, may keep one of the steps from starting when it is ready. */
function isGated({ outline, windows }: Course, { steps }: ReturnPlan): boolean {
  return [...steps.keys()].some((id) => {
    const step = outline.step(id)?.step;
    return step?.notBefore !== undefined || step?.within.some((window) => windows.get(window));
  });
}

/** Works out the return that begins at `from` with what is complete, and everybody where they are, at `pet`. */
function brokenOff(course: Course, pet: Duration, from: Duration): ReturnPlan | null {
  const { outline } = course;
  const ways = waysOf(outline.procedure);
  const crew = outline.crew.map((member, lane): Returning | null =>
    isPlaced(member) ? { standing: standingAt(course, lane, pet, ways), way: null } : null,
  );
  const outside = outline.crew.flatMap(({ station }, lane) => (station === "outside" ? [lane] : []));
  if (outside.length === 0) return null;
  const began = outside.map((lane) => crew[lane]?.standing ?? null);
  const run = new CloseoutRun(course, crew, pet, from);
  if (!run.all()) return null;
  const hasRefuge = outline.procedure.places.some(({ refuge }) => refuge);
  const returns: CrewReturn[] = [];
  let finish = run.finish;
  for (const [position, lane] of outside.entries()) {
    const member = outline.crew[lane];
    const returning = crew[lane];
    const first = began[position];
    if (!member || !returning?.standing || !first) return null;
    const free = run.free[lane] ?? from;
    const last = quickestToRefuge(returning.standing, ways);
    // Without any refuge in the procedure the closeout itself has to lead to safety; without both nothing is known.
    if (!last && (hasRefuge || returning.way === null)) return null;
    const home = plus(free, last?.cost ?? NO_TIME);
    if (home > finish) finish = home;
    returns.push({
      crew: member.id,
      from: "place" in first ? first.place : first.from,
      refuge: last?.place ?? null,
      way: returning.way ?? last?.cost ?? NO_TIME,
      home,
    });
  }
  return { from, finish, total: minus(finish, from), crew: returns, steps: run.steps };
}

/** Somebody whose place is followed on the way in. */
interface Returning {
  /** Where they are at the moment; `null` when that is not known. */
  standing: Standing | null;
  /** The time they moved before their first closeout step; `null` before it. */
  way: Duration | null;
}

/** Schedules the closeout steps that are left by the rules of the plan ([PLN1]), from where everybody is. */
class CloseoutRun {
  readonly #course: Course;
  readonly #crew: readonly (Returning | null)[];
  readonly #pet: Duration;
  readonly #from: Duration;
  /** The PET at which each lane has done its last step so far. */
  readonly free: Duration[];
  readonly steps = new Map<StepId, Stretch>();
  finish: Duration;

  constructor(course: Course, crew: readonly (Returning | null)[], pet: Duration, from: Duration) {
    this.#course = course;
    this.#crew = crew;
    this.#pet = pet;
    this.#from = from;
    this.free = crew.map(() => from);
    this.finish = from;
  }

  /** Schedules every step that is left; false when one cannot be. */
  all(): boolean {
    const { outline, network } = this.#course;
    const { active } = network.activity;
    const left = outline.steps.filter((entry) => active[entry.index] && this.#isLeft(entry));
    const placed = new Set(network.order);
    if (left.some(({ index }) => !placed.has(index))) return false;
    const isLeft = new Set(left.map(({ index }) => index));
    return network.order.every((index) => {
      const entry = outline.steps[index];
      return !entry || !isLeft.has(index) || this.#does(entry);
    });
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
    const { windows } = this.#course;
    const { step, performers } = entry;
    let ready = this.#ready(entry);
    for (const [seat, lane] of performers.entries()) {
      const arrives = this.#arrives(entry, seat, lane);
      if (arrives === null) return false;
      if (arrives > ready) ready = arrives;
    }
    const length = this.#length(entry);
    const fit = length === null ? null : earliestFit(ready, length, step.within, windows);
    if (!fit || length === null) return false;
    const finish = plus(fit.start, length);
    this.steps.set(step.id, { start: fit.start, finish });
    for (const lane of performers) {
      this.free[lane] = finish;
      const returning = this.#crew[lane];
      if (returning && step.to !== undefined) returning.standing = { place: step.to };
    }
    if (finish > this.finish) this.finish = finish;
    return true;
  }

  /** When what a step comes `after` lets it start. What is left out lets it start at once. */
  #ready(entry: OutlineStep): Duration {
    const { outline, network } = this.#course;
    const { index } = entry;
    const notBefore = notBeforeOf(entry);
    let ready = notBefore > this.#from ? notBefore : this.#from;
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
   * translation without `at` begins wherever they are. Returns `null` when no way leads there.
   */
  #arrives({ index, step }: OutlineStep, seat: number, lane: number): Duration | null {
    const free = this.free[lane] ?? this.#from;
    const returning = this.#crew[lane];
    if (!returning) return free;
    const planned = this.#course.whereabouts.from[index]?.[seat] ?? null;
    const target = step.at ?? (step.to === undefined ? planned : null);
    let way = NO_TIME;
    if (target !== null) {
      const found = returning.standing && quickestTo(returning.standing, target, this.#ways);
      if (found === null) return null;
      way = found;
      returning.standing = { place: target };
    }
    returning.way ??= way;
    return plus(free, way);
  }

  /**
   * How long a step takes. A translation takes the quickest way from where each performer is, or the time written where
   * that is longer. Where no routes lead from the place the plan has it begin at, the time written counts. Returns
   * `null` when neither tells.
   */
  #length({ index, step, performers }: OutlineStep): Duration | null {
    const { to, time } = step;
    if (to === undefined) return this.#course.whereabouts.times[index]?.likely ?? NO_TIME;
    let longest = time?.likely ?? NO_TIME;
    for (const [seat, lane] of performers.entries()) {
      const returning = this.#crew[lane];
      if (!returning) continue;
      const standing = returning.standing;
      const way = standing && quickestTo(standing, to, this.#ways);
      const planned = this.#course.whereabouts.from[index]?.[seat];
      const isAsPlanned = standing !== null && "place" in standing && standing.place === planned;
      if (way === null && !(isAsPlanned && time)) return null;
      if (way !== null && way > longest) longest = way;
    }
    return longest;
  }

  get #ways() {
    return waysOf(this.#course.outline.procedure);
  }
}
