import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Course } from "../course/index.ts";
import type { Outline, Step } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { minus, NO_TIME, plus } from "../units/index.ts";
import type { BreakingOff, Returning } from "./closeout-run.ts";
import { CloseoutRun } from "./closeout-run.ts";
import type { TimeBound } from "./sampled-bounds.ts";

/** A bound of [PRO17] that the way home breaks, and by how much. */
export interface BoundBrokenHome {
  readonly bound: TimeBound;
  readonly over: Duration;
}

/** The closeout that is left as it is scheduled, and whoever it moved along. */
export interface HomeRun {
  readonly run: CloseoutRun;
  readonly crew: readonly (Returning | null)[];
  /** In the order in which the steps are written. */
  readonly broken: readonly BoundBrokenHome[];
}

/** How often a step is put off for one bound: more than once only where windows move what follows. */
const MOST_TRIES = 8;

/**
 * Schedules the closeout that is left ([PLN6]). A closeout step that another one must follow within a time is put off
 * until that one can; what cannot be kept by putting it off is not put off, and is among the broken bounds. Returns
 * `null` when not all can be scheduled. `standing` gives everybody where they are; a run moves them along.
 */
export function homeRun(
  course: Course,
  when: BreakingOff,
  standing: () => readonly (Returning | null)[],
): HomeRun | null {
  const ran = (putOff: ReadonlyMap<StepId, Duration>): HomeRun | null => {
    const crew = standing();
    const run = new CloseoutRun(course, crew, { ...when, putOff });
    return run.all() ? { run, crew, broken: brokenBy(course, run) } : null;
  };
  const tries = new Map<string, number>();
  const putOff = new Map<string, { readonly step: StepId; readonly to: Duration }>();
  let kept = ran(new Map());
  while (kept) {
    const next = kept.broken.find(
      ({ bound }) => mayBePutOff(kept, bound) && (tries.get(keyOf(bound)) ?? 0) < MOST_TRIES,
    );
    if (!next || !("after" in next.bound)) return kept;
    const { bound, over } = next;
    const key = keyOf(bound);
    const start = kept.run.steps.get(bound.after)?.start ?? NO_TIME;
    tries.set(key, (tries.get(key) ?? 0) + 1);
    putOff.set(key, { step: bound.after, to: plus(start, over) });
    const tried = ran(latestOf(putOff.values()));
    const left = tried?.broken.find((one) => keyOf(one.bound) === key)?.over ?? NO_TIME;
    if (tried && left < over) {
      kept = tried;
    } else {
      tries.set(key, MOST_TRIES);
      putOff.delete(key);
      kept = ran(latestOf(putOff.values())) ?? kept;
    }
  }
  return null;
}

const keyOf = (bound: TimeBound) => ("after" in bound ? `${bound.step} ${bound.after}` : bound.step);

/** True when the way home itself does the step that another one must follow. */
const mayBePutOff = (kept: HomeRun | null, bound: TimeBound) =>
  "after" in bound && kept?.run.steps.has(bound.after) === true;

function latestOf(
  putOff: Iterable<{ readonly step: StepId; readonly to: Duration }>,
): ReadonlyMap<StepId, Duration> {
  const latest = new Map<StepId, Duration>();
  for (const { step, to } of putOff) {
    const known = latest.get(step);
    if (known === undefined || to > known) latest.set(step, to);
  }
  return latest;
}

/** The bounds that a run breaks. */
function brokenBy({ outline }: Course, run: CloseoutRun): BoundBrokenHome[] {
  return boundSteps(outline).flatMap((step) => {
    const laid = run.steps.get(step.id);
    if (!laid) return [];
    const broken: BoundBrokenHome[] = [];
    const { doneBy } = step;
    if (doneBy !== undefined && laid.finish > doneBy)
      broken.push({ bound: { step: step.id, doneBy }, over: minus(laid.finish, doneBy) });
    for (const { step: after, within } of step.after) {
      const finish = run.finishOf(after);
      if (within === null || finish === null || laid.start <= plus(finish, within)) continue;
      broken.push({
        bound: { step: step.id, after, within },
        over: minus(laid.start, plus(finish, within)),
      });
    }
    return broken;
  });
}

const knownBound = new WeakMap<Outline, readonly Step[]>();

/** The steps that are bound by [PRO17], as they are written. Cached for each outline, since a return is planned from every step. */
function boundSteps(outline: Outline): readonly Step[] {
  const kept = knownBound.get(outline);
  if (kept) return kept;
  const bound = outline.steps.flatMap(({ step }) =>
    step.doneBy !== undefined || step.after.some(({ within }) => within !== null) ? [step] : [],
  );
  knownBound.set(outline, bound);
  return bound;
}

/** A bound that the way home breaks, as a sentence. */
export function brokenHomeMessage({ bound, over }: BoundBrokenHome): Message {
  return "doneBy" in bound
    ? message("return/done-late", { step: bound.step, by: bound.doneBy, over })
    : message("return/started-late", { step: bound.step, after: bound.after, within: bound.within, over });
}
