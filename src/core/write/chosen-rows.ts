import { message } from "../../words/index.ts";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import type { RowPlace } from "./added-rows.ts";
import { placeAt, stepsPut, tasksPut } from "./added-rows.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import type { FileStep, FileTask } from "./sheet.ts";
import { contingencyKey, sheetOf, taskKey, tasksOf } from "./sheet.ts";

/** The rows chosen in the table: whole tasks, and steps that are in none of them; both in reading order. */
export interface Chosen {
  readonly tasks: readonly FileTask[];
  readonly steps: readonly FileStep[];
}

/** The tasks and steps of rows. A step of a chosen task goes with its task. */
export function chosenIn(file: ProcedureFile, rows: Iterable<string>): Chosen {
  const keys = new Set(rows);
  const tasks = tasksOf(file).filter(({ id }) => keys.has(taskKey(id)));
  const steps = tasksOf(file).flatMap((task) =>
    tasks.includes(task) ? [] : task.steps.filter(({ id }) => keys.has(id)),
  );
  return { tasks, steps };
}

const NOTHING = message("write/nothing-chosen");

/** Takes rows out ([WRT2]). What is selected then is the row before them, else the one behind. */
export function rowsDropped(file: ProcedureFile, rows: readonly string[]): Proposal {
  const { tasks, steps } = chosenIn(file, rows);
  if (tasks.length + steps.length === 0) return impossible(NOTHING);
  if (file.tasks.every((task) => tasks.includes(task))) return impossible(message("write/last-task"));
  const gone = new Set([
    ...tasks.flatMap((task) => [taskKey(task.id), ...task.steps.map(({ id }) => id)]),
    ...steps.map(({ id }) => id),
  ]);
  const keys = sheetOf(file).map(({ key }) => key);
  const first = keys.findIndex((key) => gone.has(key));
  const next = keys.slice(0, first).at(-1) ?? keys.slice(first).find((key) => !gone.has(key));
  return proposed(
    [
      ...tasks.map(({ id }): Change => ({ drop: id, list: "tasks" })),
      ...steps.map(({ id }): Change => ({ drop: id })),
    ],
    next === undefined ? [] : [next],
  );
}

/** Puts a copy of rows behind the last of them ([WRT2]). */
export function rowsDuplicated(file: ProcedureFile, rows: readonly string[]): Proposal {
  const { tasks, steps } = chosenIn(file, rows);
  const [task, step] = [tasks.at(-1), steps.at(-1)];
  if (task && step) return impossible(message("write/tasks-or-steps"));
  if (task) return tasksPut(file, taskKey(task.id), tasks);
  return step ? stepsPut(file, step.id, steps) : impossible(NOTHING);
}

const inARow = (steps: readonly FileStep[], first: RowPlace): Change[] =>
  steps.map(({ id }, index): Change => {
    const before = steps[index - 1];
    return { move: id, ...(before ? { behind: before.id } : first) };
  });

/** Where a row to which others are moved has room for steps, and for tasks. */
interface Destination {
  /** `null` where there is no task to put them in. */
  readonly ofSteps: RowPlace | null;
  readonly ofTasks: { readonly behind: FileTask } | { readonly first: true | string };
}

function destinationAt(file: ProcedureFile, row: string | null): Destination | null {
  const firstOf = (tasks: readonly FileTask[], first: true | string): Destination => ({
    ofSteps: tasks[0] ? { first: tasks[0].id } : null,
    ofTasks: { first },
  });
  if (row === null) return firstOf(file.tasks, true);
  const contingency = file.contingencies?.find(({ id }) => contingencyKey(id) === row);
  if (contingency) return firstOf(contingency.tasks, contingency.id);
  const ofSteps = placeAt(file, row);
  const behind = tasksOf(file).find(
    (task) => taskKey(task.id) === row || task.steps.some(({ id }) => id === row),
  );
  return ofSteps && behind ? { ofSteps, ofTasks: { behind } } : null;
}

/**
 * Moves rows to another one ([WRT2]): steps behind a step or first in a task, tasks behind the task of the row; behind the heading of a
 * contingency, or of everything with `null`, they come first there.
 */
export function rowsMoved(file: ProcedureFile, rows: readonly string[], to: string | null): Proposal {
  const { tasks, steps } = chosenIn(file, rows);
  if (tasks.length > 0 && steps.length > 0) return impossible(message("write/tasks-or-steps"));
  if (tasks.length + steps.length === 0) return impossible(NOTHING);
  const place = destinationAt(file, to);
  if (!place) return impossible(message("write/no-row"));
  if (steps.length > 0) {
    if (steps.some(({ id }) => id === to)) return impossible(message("write/beside-itself"));
    return place.ofSteps ? proposed(inARow(steps, place.ofSteps), rows) : impossible(message("write/no-row"));
  }
  const { ofTasks } = place;
  if ("behind" in ofTasks && tasks.includes(ofTasks.behind))
    return impossible(message("write/beside-itself"));
  if (to !== null && file.tasks.every((task) => tasks.includes(task)))
    return impossible(message("write/last-task"));
  const first = "behind" in ofTasks ? { behind: ofTasks.behind.id } : ofTasks;
  return proposed(
    tasks.map(({ id }, index): Change => {
      const before = tasks[index - 1];
      return { move: id, list: "tasks", ...(before ? { behind: before.id } : first) };
    }),
    rows,
  );
}

/**
 * Moves rows one place up or down ([WRT2]). The chosen steps come together; from the edge of a task they go into the next one. Tasks pass
 * the task beside them.
 */
export function rowsShifted(file: ProcedureFile, rows: readonly string[], by: "up" | "down"): Proposal {
  const { tasks, steps } = chosenIn(file, rows);
  if (tasks.length > 0 && steps.length > 0) return impossible(message("write/tasks-or-steps"));
  if (tasks.length > 0) return tasksShifted(file, tasks, by, rows);
  const [first, last] = [steps[0], steps.at(-1)];
  if (!first || !last) return impossible(NOTHING);
  const all = tasksOf(file);
  const home = (step: FileStep) => all.findIndex((task) => task.steps.includes(step));
  if (by === "down") {
    const at = home(last);
    const behind = all[at]?.steps[(all[at]?.steps.indexOf(last) ?? 0) + 1];
    if (behind) return proposed(inARow(steps, { behind: behind.id }), rows);
    const next = all[at + 1];
    return next ? proposed(inARow(steps, { first: next.id }), rows) : impossible(message("write/at-the-end"));
  }
  const at = home(first);
  const task = all[at];
  const index = task?.steps.indexOf(first) ?? 0;
  const [above, before] = [task?.steps[index - 1], task?.steps[index - 2]];
  if (task && above)
    return proposed(inARow(steps, before ? { behind: before.id } : { first: task.id }), rows);
  const previous = all[at - 1];
  if (!previous) return impossible(message("write/at-the-beginning"));
  const end = previous.steps.at(-1);
  return proposed(inARow(steps, end ? { behind: end.id } : { first: previous.id }), rows);
}

function tasksShifted(
  file: ProcedureFile,
  tasks: readonly FileTask[],
  by: "up" | "down",
  rows: readonly string[],
): Proposal {
  const [first, last] = [tasks[0], tasks.at(-1)];
  const contingency = (file.contingencies ?? []).find((one) => one.tasks.some((task) => task === first));
  const siblings: readonly FileTask[] = contingency ? contingency.tasks : file.tasks;
  if (!first || !last || tasks.some((task) => !siblings.includes(task)))
    return impossible(message("write/tasks-or-steps"));
  const at = by === "down" ? siblings.indexOf(last) + 1 : siblings.indexOf(first) - 2;
  const behind = siblings[at];
  if (by === "down" && !behind) return impossible(message("write/at-the-end"));
  if (by === "up" && at < -1) return impossible(message("write/at-the-beginning"));
  return proposed(
    tasks.map(({ id }, index): Change => {
      const before = tasks[index - 1] ?? behind;
      return {
        move: id,
        list: "tasks",
        ...(before ? { behind: before.id } : { first: contingency ? contingency.id : (true as const) }),
      };
    }),
    rows,
  );
}
