import type { Course } from "../course/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { Change, Finding, Task } from "../procedure/index.ts";
import type { Duration, TaskId, WindowId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { FitCase } from "./fit-case.ts";
import type { KeptSet } from "./search.ts";
import { searchSets } from "./search.ts";
import { shortBy } from "./short-by.ts";
import type { ValueOf } from "./worth-bound.ts";
import { worthBound, worthOf } from "./worth-bound.ts";

/** How a fit is asked for. */
export interface FitOptions {
  /** The PET by which all is to be done; `null` when there is no limit. */
  readonly limit: Duration | null;
  /** The least chance, from 0 to 1, of being done by the limit; `null` to go by the likely times alone. */
  readonly chance: number | null;
  /** How many times durations are sampled when a set that is offered is looked at anew. */
  readonly samples: number;
  readonly seed: number;
  /** How many sets are looked at before the search ends with what it has. */
  readonly tries: number;
}

/** One choice of tasks, and what it comes to. */
export interface FittedSet {
  /** The get-aheads that are kept, in reading order. */
  readonly keep: readonly TaskId[];
  /** The get-aheads that are left out. */
  readonly drop: readonly TaskId[];
  /** The worth of those kept, together. */
  readonly worth: number;
  /** PET, by likely times. */
  readonly finish: Duration;
  /** Limit − finish; `null` without a limit. */
  readonly margin: Duration | null;
  /** Share of samples that are done by the limit, of samples which the search has not seen; `null` without a limit. */
  readonly withinLimit: number | null;
  /** The standard error of that share. */
  readonly error: number | null;
  /** The windows, of light or contact or others, in which its steps must lie. */
  readonly windows: readonly WindowId[];
  /** What is left outside or is not as it should be at the end, in this set as without any get-ahead. */
  readonly left: readonly Finding[];
  /** The changes that make a procedure of it in which all that is kept is to be done. */
  readonly changes: readonly Change[];
}

/** The answer to the question what fits ([FIT1], [FIT2]). It is plain data, so that a worker can hand it on. */
export interface Fit {
  /** `proven`: no set that fits is worth more than the first. `best-found`: the bound says how much more there could be. */
  readonly verdict: "proven" | "best-found" | "does-not-fit";
  /** By how much the work without any get-ahead misses the limit; `null` when it fits, or cannot be planned at all. */
  readonly shortBy: Duration | null;
  /** The sets that fit, best first. */
  readonly sets: readonly FittedSet[];
  /**
   * The set that leaves out the fewest get-aheads, and of such sets the one that is worth most; `null` where the first
   * set leaves out no more, and where nothing fits.
   */
  readonly fewest: FittedSet | null;
  /** No set that fits is worth more. */
  readonly bound: number;
  /** How many sets were looked at. */
  readonly tried: number;
  /** The same work without any get-ahead, whether it fits or not; `null` when it cannot be planned. */
  readonly essential: FittedSet | null;
}

/** How many sets an answer has at most. */
const WANTED = 5;

/** The search samples each set so often; the sets that are offered are sampled anew. */
const SEARCH_SAMPLES = 500;

/**
 * Returns which get-aheads fit under a limit, best first ([FIT1]). Essential work is never left out here: where it does
 * not fit, the answer says by how much. A set fits when its likely finish is within the limit and, where a chance is
 * asked for, at least that share of samples is. Sets that break a rule of the checker are no answer. The same seed
 * gives the same answer.
 */
export function fitOf(fitCase: FitCase, options: FitOptions): Fit {
  const { limit, chance, samples, seed, tries } = options;
  const share = (course: Course, count: number, by: number) =>
    limit === null
      ? null
      : sampleRisk({ ...riskModelOf(course), limit }, count, by, { influence: false }).withinLimit;
  const isWithin = (course: Course, count: number, by: number) =>
    limit === null ||
    (course.finish <= limit && (chance === null || (share(course, count, by) ?? 0) >= chance));
  const known = new Map<string, boolean>();
  const fits = (kept: ReadonlySet<TaskId>) => {
    const key = [...kept].sort().join(" ");
    const course = known.has(key) ? null : fitCase.courseWith(kept);
    const answer = known.get(key) ?? (course !== null && isWithin(course, SEARCH_SAMPLES, seed));
    known.set(key, answer);
    return answer;
  };
  const search = (value: ValueOf, wanted: number) => {
    const order = limit === null ? fitCase.choices : inOrderOfGain(fitCase.choices, value);
    return searchSets({
      order,
      value,
      bound: worthBound(fitCase, order, limit ?? (Number.POSITIVE_INFINITY as Duration), value),
      fits,
      isSound: (kept) => fitCase.problemsWith(kept).length === 0,
      wanted,
      tries,
    });
  };
  const found = search(worthOf, WANTED);
  const detailed = (kept: ReadonlySet<TaskId>, course: Course): FittedSet => {
    const withinLimit = share(course, samples, seed + 1);
    const ids = fitCase.choices.map(({ id }) => id);
    const [keep, drop] = [ids.filter((id) => kept.has(id)), ids.filter((id) => !kept.has(id))];
    return {
      keep,
      drop,
      worth: fitCase.choices.reduce((sum, task) => sum + (kept.has(task.id) ? worthOf(task) : 0), 0),
      finish: course.finish,
      margin: limit === null ? null : minus(limit, course.finish),
      withinLimit,
      error: withinLimit === null ? null : Math.sqrt((withinLimit * (1 - withinLimit)) / samples),
      windows: windowsOf(course),
      left: fitCase.leftWith(kept),
      changes: [
        ...keep.map((id): Change => ({ change: id, list: "tasks", unset: ["priority"] })),
        ...drop.map((id): Change => ({ drop: id, list: "tasks" })),
      ],
    };
  };
  const none = fitCase.courseWith(new Set());
  const isEnough = ({ withinLimit }: FittedSet) => chance === null || (withinLimit ?? 1) >= chance;
  const offered = ({ kept }: KeptSet) => {
    const course = fitCase.courseWith(kept);
    const set = course && detailed(kept, course);
    // What just met the chance in the samples of the search may miss it in others.
    return set && isEnough(set) ? [set] : [];
  };
  const sets = found.best.flatMap(offered);
  // Where nothing is left out there is no set that leaves out less.
  const leavesOut = sets[0] !== undefined && sets[0].drop.length > 0;
  const fewest = leavesOut ? search(asMany(fitCase.choices), 1).best.flatMap(offered)[0] : undefined;
  const isBest = found.isProven && sets[0]?.worth === found.best[0]?.worth;
  return {
    verdict: sets.length === 0 ? "does-not-fit" : isBest ? "proven" : "best-found",
    shortBy: sets.length > 0 || !none ? null : shortBy(none, options),
    sets,
    fewest: fewest && fewest.drop.length < (sets[0]?.drop.length ?? 0) ? fewest : null,
    bound: found.bound,
    tried: found.tried,
    essential: none && detailed(new Set(), none),
  };
}

/** Counts each task for one, and for so much more by its worth that of two sets as large the one worth more is first. */
function asMany(choices: readonly Task[]): ValueOf {
  const all = choices.reduce((sum, task) => sum + worthOf(task), 0);
  return (task) => 1 + worthOf(task) / (1 + all);
}

/** The choices by what they are worth for the time that they take, so that good sets are met early. */
function inOrderOfGain(choices: readonly Task[], value: ValueOf): readonly Task[] {
  const time = ({ steps }: Task) =>
    steps.reduce((sum, step) => sum + (step.time?.likely ?? 0) * step.by.length, 0);
  return choices
    .map((task) => ({ task, worth: value(task), time: time(task) }))
    .sort((a, b) => b.worth * a.time - a.worth * b.time || b.worth - a.worth)
    .map(({ task }) => task);
}

function windowsOf({ steps, outline }: Course): readonly WindowId[] {
  const named = [...steps.values()].flatMap(({ step, stage }) =>
    stage === "planned" ? (outline.step(step)?.step.within ?? []) : [],
  );
  return [...new Set(named)];
}
