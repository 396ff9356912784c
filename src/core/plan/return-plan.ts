import type { Course, Stretch } from "../course/index.ts";
import { crewPlaceAt } from "../course/index.ts";
import { isPlaced, waysOf } from "../place/index.ts";
import type { CrewId, Duration, PlaceId, StepId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { BreakingOff, Returning } from "./closeout-run.ts";
import { CloseoutRun } from "./closeout-run.ts";
import type { BoundBrokenHome } from "./home-run.ts";
import { homeRun } from "./home-run.ts";
import type { ReturnBar } from "./return-bar.ts";
import { standingAt } from "./standing.ts";

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
  /** The bounds of [PRO17] that it breaks, in reading order. */
  readonly broken: readonly BoundBrokenHome[];
}

const known = new WeakMap<Course, Map<Duration, ReturnPlan | null>>();

/**
 * The return plan of a course when the work is broken off at a PET ([PLN6]); a plan, a forecast and a walk as flown are
 * asked in the same way. Only what the course has up to that PET matters: what is complete, and where everybody is.
 *
 * Returns `null` when it cannot be told: nobody is outside, it is not known where somebody is, no open ways with a time
 * lead to a step or to a refuge, steps wait for each other, a step fits no span of its windows any more, or a value that
 * one needs is never set ({@link returnBarAt}).
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

/**
 * Works out the return that begins at `from` with what is complete, the states as they are, and everybody where they
 * are, at `pet`.
 */
function brokenOff(course: Course, pet: Duration, from: Duration): ReturnPlan | null {
  const found = returnOf(course, { pet, from, heedsStates: true });
  // Whoever has not left the refuges yet cannot be shut out. The rest of closeout then counts in full.
  return found === null && isEverybodyIn(course, pet)
    ? returnOf(course, { pet, from, heedsStates: false })
    : found;
}

/** True when everybody outside is at a refuge at a PET. */
function isEverybodyIn(course: Course, pet: Duration): boolean {
  const { outline } = course;
  return outline.crew.every(({ station }, lane) => {
    const place = station === "outside" ? crewPlaceAt(course, lane, pet) : null;
    return (
      station !== "outside" || (place && "place" in place && outline.place(place.place)?.refuge) === true
    );
  });
}

/**
 * The state that keeps a return from being told ([PRO13]): a value that the closeout needs is never set on the way home,
 * or no way that is open leads back. `null` when the return can be told, or states are not all that keeps it from that.
 */
export function returnBarAt(course: Course, pet: Duration): ReturnBar | null {
  if (course.outline.procedure.states.length === 0 || returnPlanAt(course, pet) !== null) return null;
  if (returnOf(course, { pet, from: pet, heedsStates: false }) === null) return null;
  const run = new CloseoutRun(course, standingsAt(course, pet), { pet, from: pet, heedsStates: true });
  run.all();
  return run.barredBy(outsideLanes(course));
}

const outsideLanes = ({ outline }: Course) =>
  outline.crew.flatMap(({ station }, lane) => (station === "outside" ? [lane] : []));

/** Where everybody whose place is followed is at a PET. */
export function standingsAt(course: Course, pet: Duration): (Returning | null)[] {
  const ways = waysOf(course.outline.procedure);
  return course.outline.crew.map((member, lane): Returning | null =>
    isPlaced(member) ? { standing: standingAt(course, lane, pet, ways), way: null } : null,
  );
}

function returnOf(course: Course, when: BreakingOff): ReturnPlan | null {
  const { outline } = course;
  const { pet, from } = when;
  const outside = outsideLanes(course);
  if (outside.length === 0) return null;
  const standing = standingsAt(course, pet);
  const home = homeRun(course, when, () => standing.map((one) => one && { ...one }));
  if (!home) return null;
  const { run, crew, broken } = home;
  const began = outside.map((lane) => standing[lane]?.standing ?? null);
  const hasRefuge = outline.procedure.places.some(({ refuge }) => refuge);
  const returns: CrewReturn[] = [];
  let finish = run.finish;
  for (const [position, lane] of outside.entries()) {
    const member = outline.crew[lane];
    const returning = crew[lane];
    const first = began[position];
    if (!member || !returning?.standing || !first) return null;
    const free = run.freeOf(lane);
    const last = run.home(lane);
    // Without any refuge in the procedure the closeout itself has to lead to safety; without both nothing is known.
    if (!last && (hasRefuge || returning.way === null)) return null;
    const at = last?.at ?? free;
    if (at > finish) finish = at;
    returns.push({
      crew: member.id,
      from: "place" in first ? first.place : first.from,
      refuge: last?.refuge ?? null,
      way: returning.way ?? minus(at, free),
      home: at,
    });
  }
  return { from, finish, total: minus(finish, from), crew: returns, steps: run.steps, broken };
}
