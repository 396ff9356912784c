import { changeMessage, shiftedWindow, swappedFields, timeByLikely } from "../../core/changes/index.ts";
import type { Change, Outline, OutlineStep, Task, TimeWindow } from "../../core/procedure/index.ts";
import type { CrewId, Duration, StepId } from "../../core/units/index.ts";
import { formatDuration } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { FittingTasks } from "../fit/index.ts";
import { callsOf } from "../parts/index.ts";

/** One thing that a lead wishes to have otherwise, and the changes that make it so. */
export interface Wish {
  readonly says: string;
  readonly changes: readonly Change[];
}

const stepName = ({ number, step }: OutlineStep) => words("amending/step-name", { number, action: step.do });

/** A step takes another time. */
export const retimed = (entry: OutlineStep, likely: Duration): Wish => ({
  says: words("amending/takes", { step: stepName(entry), time: likely }),
  changes: [{ change: entry.step.id, set: { time: timeByLikely(entry.step, likely) } }],
});

/** A step is done by others. */
export const reassigned = (outline: Outline, entry: OutlineStep, by: readonly CrewId[]): Wish => ({
  says: words("amending/done-by", { step: stepName(entry), crew: callsOf(outline, by) }),
  changes: [{ change: entry.step.id, set: { by: [...by] } }],
});

/** A step is taken out of the plan. */
export const dropped = (entry: OutlineStep): Wish => ({
  says: words("amending/taken-out", { what: stepName(entry) }),
  changes: [{ drop: entry.step.id }],
});

/** A step stands behind another. */
export const moved = (entry: OutlineStep, behind: OutlineStep): Wish => ({
  says: words("amending/stands-behind", { what: stepName(entry), behind: stepName(behind) }),
  changes: [{ move: entry.step.id, behind: behind.step.id }],
});

/** What a new step is. */
export interface NewStep {
  readonly action: string;
  readonly by: readonly CrewId[];
  readonly time: Duration;
  readonly behind: OutlineStep;
}

/**
 * A new step behind another. Its id is made of the PET in seconds at which it was written, so that two leads who add
 * steps apart give them different ids.
 */
export function added(outline: Outline, { action, by, time, behind }: NewStep, seconds: number): Wish {
  let id = `added-${Math.max(0, seconds)}`;
  for (let number = 2; outline.step(id as StepId) !== null; number += 1) id = `added-${seconds}-${number}`;
  return {
    says: words("amending/added", { action, crew: callsOf(outline, by), behind: stepName(behind), time }),
    changes: [{ add: { id, by: [...by], do: action, time: formatDuration(time) }, behind: behind.step.id }],
  };
}

/** Changes that were wished before, told one by one as the vocabulary has them. */
export const wishesOf = (changes: readonly Change[]): readonly Wish[] =>
  changes.map((change) => ({ says: inWords(changeMessage(change)), changes: [change] }));

/** A task is taken out of the plan. */
export const taskDropped = ({ id, title }: Task): Wish => ({
  says: words("amending/taken-out", { what: title }),
  changes: [{ drop: id, list: "tasks" }],
});

/** A get-ahead counts as essential, so that it is done. */
export const getAheadIn = ({ id, title }: Task): Wish => ({
  says: words("amending/get-ahead-in", { task: title }),
  changes: [{ change: id, list: "tasks", unset: ["priority"] }],
});

/** A task stands behind another. */
export const taskMoved = (task: Task, behind: Task): Wish => ({
  says: words("amending/stands-behind", { what: task.title, behind: behind.title }),
  changes: [{ move: task.id, list: "tasks", behind: behind.id }],
});

/** Two people change places in the steps of a task that may still be changed; `null` when they are in none. */
export function swapped(
  outline: Outline,
  { id, title }: Task,
  pair: readonly [CrewId, CrewId],
  isOpen: (step: StepId) => boolean,
): Wish | null {
  const changes = outline.steps.flatMap(({ step, task }): Change[] => {
    if (task.id !== id || !isOpen(step.id)) return [];
    const set = swappedFields(step, pair, outline);
    return Object.keys(set).length === 0 ? [] : [{ change: step.id, set }];
  });
  const [one, other] = pair.map((crew) => callsOf(outline, [crew]));
  return changes.length === 0
    ? null
    : { says: words("amending/swapped", { one: one ?? "", other: other ?? "", task: title }), changes };
}

/** A window comes later, or earlier below zero. */
export const windowShifted = (window: TimeWindow, by: Duration): Wish => {
  const name = window.label ?? window.id;
  return {
    says:
      by < 0
        ? words("amending/window-earlier", { window: name, by: -by as Duration })
        : words("amending/window-later", { window: name, by }),
    changes: [shiftedWindow(window, by)],
  };
};

/** The wishes that make a plan of what fits. */
export const fitted = (outline: Outline, { keep, out }: FittingTasks): readonly Wish[] =>
  outline.procedure.tasks.flatMap((task) => [
    ...(keep.includes(task.id) ? [getAheadIn(task)] : []),
    ...(out.includes(task.id) ? [taskDropped(task)] : []),
  ]);
