import type { Stretch } from "../course/index.ts";
import type { Outline, Task } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { minus } from "../units/index.ts";
import { difference } from "./differences.ts";
import type { StepReview, TaskReview, TaskStretch } from "./review.ts";

/** Returns the review of one task, planned against actual, from the reviews of all steps. */
export function taskReview(outline: Outline, task: Task, steps: readonly StepReview[]): TaskReview {
  const own = steps.filter(({ step }) => outline.step(step)?.task === task);
  const planned = stretchOf(outline, own, (step) => step.planned);
  const actual = stretchOf(outline, own, (step) => (step.ending === "done" ? step.actual : null));
  return {
    task: task.id,
    title: task.title,
    getAhead: task.priority === "get-ahead",
    planned,
    actual,
    startDifference: difference(actual?.start ?? null, planned?.start ?? null),
    finishDifference: difference(actual?.finish ?? null, planned?.finish ?? null),
    timeDifference: difference(elapsed(actual), elapsed(planned)),
    crewTimeDifference: difference(actual?.crewTime ?? null, planned?.crewTime ?? null),
    done: own.filter(({ ending }) => ending === "done").length,
    skipped: own.filter(({ ending }) => ending === "skipped").length,
    of: own.filter(({ ending }) => ending !== "not-performed").length,
  };
}

const elapsed = (stretch: Stretch | null): Duration | null => stretch && minus(stretch.finish, stretch.start);

function stretchOf(
  outline: Outline,
  steps: readonly StepReview[],
  sideOf: (step: StepReview) => Stretch | null,
): TaskStretch | null {
  const sides = steps.flatMap((step) => {
    const side = sideOf(step);
    return side
      ? [{ start: side.start, finish: side.finish, performers: outline.step(step.step)?.step.by.length ?? 1 }]
      : [];
  });
  if (sides.length === 0) return null;
  return {
    start: Math.min(...sides.map(({ start }) => start)) as Duration,
    finish: Math.max(...sides.map(({ finish }) => finish)) as Duration,
    crewTime: sides.reduce(
      (sum, { start, finish, performers }) => sum + (finish - start) * performers,
      0,
    ) as Duration,
  };
}
