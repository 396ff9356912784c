import type { Outline } from "../procedure/index.ts";
import type { ModelTask } from "./split-model.ts";

/**
 * Which tasks must stay before which. Tasks that are not free keep their order, no task goes past one of closeout, and a
 * task stays behind those that its steps wait for or hang on by a decision.
 */
export function taskOrderOf(outline: Outline, modelTasks: readonly ModelTask[]) {
  const { tasks } = outline.procedure;
  const count = tasks.length;
  const stays = new Uint8Array(count * count);
  const number = new Map(tasks.map(({ id }, index) => [id, index]));
  const isFree = (index: number) => modelTasks[index]?.isFree === true;
  for (let one = 0; one < count; one += 1)
    for (let other = one + 1; other < count; other += 1)
      if (
        (!isFree(one) && !isFree(other)) ||
        tasks[one]?.closeout === true ||
        tasks[other]?.closeout === true
      )
        stays[one * count + other] = 1;
  let hasForward = false;
  for (const { step, task } of outline.steps) {
    const own = number.get(task.id) ?? 0;
    const deciders = Object.keys(step.when ?? {}).map((id) => outline.decision(id)?.madeBy.task.id);
    for (const id of [...step.after.map(({ step: named }) => outline.step(named)?.task.id), ...deciders]) {
      const before = id === undefined ? undefined : number.get(id);
      if (before === undefined || before === own) continue;
      if (before < own) stays[before * count + own] = 1;
      else hasForward = true;
    }
  }
  for (const { index, step, task } of outline.steps)
    hasForward ||= step.after.some(({ step: id }) => {
      const named = outline.step(id);
      return named !== null && named.task.id === task.id && named.index > index;
    });
  return { stays, hasForward };
}
