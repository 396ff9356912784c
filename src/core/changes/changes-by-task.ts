import type { Message } from "../../words/index.ts";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import { changeMessage } from "./change-messages.ts";
import { fieldsBefore } from "./fields-before.ts";
import { rollOf } from "./members.ts";

/** The changes that concern one task. */
export interface TaskChanges {
  /** The id of the task; `null` for what stands in none. */
  readonly task: string | null;
  /** The title of the task, as it is after the changes where it is still there; `null` for what stands in none. */
  readonly title: string | null;
  readonly changes: readonly { readonly change: Change; readonly message: Message }[];
}

/**
 * The changes that make one file of another, in words, by the tasks they concern: what stands in no task first, then the tasks of the
 * later file in their order, then those that are only in the earlier. Tasks without a change are left out.
 */
export function changesByTask(
  before: ProcedureFile,
  after: ProcedureFile,
  changes: readonly Change[],
): readonly TaskChanges[] {
  const [old, next] = [rollsOf(before), rollsOf(after)];
  const fieldsOf = fieldsBefore(before);
  const groups = new Map<string | null, TaskChanges["changes"][number][]>();
  for (const task of [null, ...next.tasks.keys(), ...old.tasks.keys()]) groups.set(task, []);
  for (const change of changes) {
    const step = stepOf(change);
    const task = step === null ? taskOf(change) : (next.steps.get(step) ?? old.steps.get(step))?.holder;
    const said = { change, message: changeMessage(change, fieldsOf(change)) };
    (groups.get(task ?? null) ?? groups.get(null))?.push(said);
  }
  return [...groups].flatMap(([task, said]) => {
    if (said.length === 0) return [];
    const title = task === null ? null : (next.tasks.get(task) ?? old.tasks.get(task))?.member["title"];
    return { task, title: typeof title === "string" ? title : null, changes: said };
  });
}

const rollsOf = (file: ProcedureFile) => ({
  steps: rollOf(file, "steps").members,
  tasks: rollOf(file, "tasks").members,
});

/** The step that a change is about; `null` for a change of something else. */
function stepOf(change: Change): string | null {
  if ("head" in change || "bring" in change || (change.list ?? "steps") !== "steps") return null;
  return idNamed(change);
}

/** The task that a change is about itself; `null` for a change of something else. */
function taskOf(change: Change): string | null {
  return "head" in change || "bring" in change || change.list !== "tasks" ? null : idNamed(change);
}

function idNamed(change: Exclude<Change, { readonly head: unknown } | { readonly bring: string }>): string {
  if ("add" in change) return String(change.add["id"]);
  if ("drop" in change) return change.drop;
  if ("move" in change) return change.move;
  return "rename" in change ? change.rename : change.change;
}
