import type { Procedure } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import type { Difference } from "./compared-steps.ts";
import { inContingencies } from "./compared-steps.ts";

/** A step that is not there any more. */
export interface DroppedStep {
  readonly id: StepId;
  readonly action: string;
  /** The call signs of who was to do it. */
  readonly calls: readonly string[];
}

/** Where dropped steps stood: behind a step of the same task that is there still, by its id, or at the beginning of a task, by {@link firstOf}. */
export type DroppedPlaces = ReadonlyMap<string, readonly DroppedStep[]>;

/** The place at the beginning of a task, which no id of a step can be. */
export const firstOf = (task: string): string => `/${task}`;

/**
 * The steps that were taken out of tasks that are there still, by where they stood. Those of a task that is gone are told with it. `before` is the
 * earlier procedure with the texts that are shown.
 */
export function droppedPlaces({ after, steps }: Difference, before: Procedure): DroppedPlaces {
  const call = new Map(before.crew.map((one) => [one.id as string, one.call]));
  const now = new Map(
    [...after.tasks, ...inContingencies(after)].map((task) => [
      task.id as string,
      new Set(task.steps.map(({ id }) => id)),
    ]),
  );
  const places = new Map<string, DroppedStep[]>();
  for (const task of [...before.tasks, ...inContingencies(before)]) {
    const own = now.get(task.id);
    if (!own) continue;
    let place = firstOf(task.id);
    for (const step of task.steps) {
      if (own.has(step.id)) place = step.id;
      else if (steps.get(step.id as StepId) === "dropped") {
        const dropped = places.get(place) ?? [];
        places.set(place, dropped);
        dropped.push({
          id: step.id as StepId,
          action: step.do,
          calls: step.by.map((crew) => call.get(crew) ?? crew),
        });
      }
    }
  }
  return places;
}
