import { message } from "../../words/index.ts";
import type { Finding, GetAheads, Outcomes, Outline, Task } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { TaskId } from "../units/index.ts";

/** Get-aheads that are looked at together; `alone` is the one task when it is just one of several. */
export interface GetAheadSet {
  readonly getAheads: GetAheads;
  readonly alone: Task | null;
}

/** A get-ahead that brings errors when it is the only one that is done; `missed` has the keys of those. */
export interface LonelyGetAhead {
  readonly task: Task;
  readonly outcomes: Outcomes;
  readonly missed: readonly string[];
}

/** With more sets of get-aheads over all scenarios than this, each alone is looked at in the expected one only. */
const MOST_SETS = 1024;

const getAheadTasks = ({ procedure }: Outline) =>
  procedure.tasks.filter(({ priority, steps }) => priority === "get-ahead" && steps.length > 0);

/** Returns the sets of get-aheads that are looked at in a scenario: none, all, and each alone ([PRO16]). */
export function getAheadSets(outline: Outline, outcomes: Outcomes, scenarios: number): GetAheadSet[] {
  const tasks = getAheadTasks(outline);
  const none = { getAheads: false, alone: null };
  if (tasks.length === 0) return [none];
  const isEach = tasks.length > 1 && (outcomes.size === 0 || tasks.length * scenarios <= MOST_SETS);
  const each = isEach ? tasks.map((task) => ({ getAheads: new Set([task.id]), alone: task })) : [];
  return [none, { getAheads: true, alone: null }, ...each];
}

/**
 * Returns the finding for a get-ahead that needs another one ([PRO16]). `keysWith` gives the keys of all findings with
 * some get-aheads.
 */
export function neededGetAhead(
  outline: Outline,
  { task, missed }: LonelyGetAhead,
  keysWith: (getAheads: ReadonlySet<TaskId>) => readonly string[],
): Finding {
  const other = getAheadTasks(outline).find(({ id }) => {
    if (id === task.id) return false;
    const keys = new Set(keysWith(new Set([task.id, id])));
    return missed.every((key) => !keys.has(key));
  });
  const pointer = `/tasks/${outline.procedure.tasks.indexOf(task)}`;
  const said = other
    ? message("task/needs-get-ahead", { task: task.title, other: other.title })
    : message("task/needs-get-aheads", { task: task.title });
  return finding("error", "task/needs-get-ahead", pointer, said, {
    steps: task.steps.map(({ id }) => id),
    things: other ? [task.id, other.id] : [task.id],
  });
}
