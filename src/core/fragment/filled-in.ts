import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { rollOf } from "../changes/index.ts";
import type { Change, Fields, ProcedureFile } from "../procedure/index.ts";
import type { BlankValues, FilledGroup, Origin } from "./blank-values.ts";
import { blankProblem, withBlanksFilled } from "./blank-values.ts";
import type { Fragment } from "./fragment.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** Where a fragment is put: its steps behind a step, within that one's task, or as a task of their own behind a task; its tasks behind a task. */
export type FragmentPlace = { readonly behindStep: string } | { readonly behindTask: string };

/** The changes that put a fragment in, or why that cannot be done. */
export type FilledIn =
  | { readonly changes: readonly Change[]; readonly problem: null }
  | { readonly changes: null; readonly problem: Message };

/** The changes that put a fragment into a procedure with its blanks filled ([WRT9]). */
export function filledIn(
  fragment: Fragment,
  file: ProcedureFile,
  blanks: BlankValues,
  place: FragmentPlace,
): FilledIn {
  const problem = blankProblem(fragment, file, blanks);
  if (problem) return { changes: null, problem };
  const steps = rollOf(file, "steps").members;
  const tasks = rollOf(file, "tasks").members;
  const isThere = "behindStep" in place ? steps.has(place.behindStep) : tasks.has(place.behindTask);
  if (!isThere) return { changes: null, problem: message("fragment/no-such-place") };
  if (fragment.tasks && "behindStep" in place)
    return { changes: null, problem: message("fragment/tasks-go-behind-task") };
  const use = free(
    fragment.id,
    new Set([...steps.values()].flatMap(({ member }) => originOf(member)?.use ?? [])),
  );
  const made = partsOf(fragment, file, { use, blanks, ids: new Map() });
  if ("behindStep" in place) {
    const parts = made.flatMap((group) => group.steps);
    const changes = parts.map(
      (step, index): Change => ({ add: step, behind: parts[index - 1]?.id ?? place.behindStep }),
    );
    return { changes, problem: null };
  }
  const taken = new Set(tasks.keys());
  const changes: Change[] = [];
  let behind = place.behindTask;
  for (const { task, steps: own } of made) {
    const id = free(task?.id ?? fragment.id, taken);
    taken.add(id);
    const head = task ?? { id, title: fragment.title };
    changes.push({ add: { ...head, id, steps: own }, list: "tasks", behind });
    behind = id;
  }
  return { changes, problem: null };
}

/** One use of a fragment: what its blanks are filled with, and the ids that its parts have already. */
export interface FragmentUse {
  readonly use: string;
  readonly blanks: BlankValues;
  readonly ids: ReadonlyMap<string, string>;
}

/** The groups of a fragment as they stand in a procedure: blanks filled, the ids of steps free there, and where these come from. Tasks keep theirs. */
export function partsOf(
  fragment: Fragment,
  file: ProcedureFile,
  { use, blanks, ids }: FragmentUse,
): readonly FilledGroup[] {
  const all = rollOf(file, "steps").members;
  const own = new Set(ids.values());
  const taken = new Set(all.keys());
  const takenDecisions = new Set(
    [...all.values()].flatMap(({ id, member }) => (own.has(id) ? [] : (decisionOf(member) ?? []))),
  );
  const groups = withBlanksFilled(fragment, file, blanks);
  const filled = groups.flatMap((group) => group.steps);
  const idOf = new Map<string, string>();
  for (const { id } of filled) {
    const given = ids.get(id) ?? free(id, taken);
    taken.add(given);
    idOf.set(id, given);
  }
  const decisions = new Map<string, string>();
  for (const step of filled) {
    const id = decisionOf(step);
    if (id === null) continue;
    const given = free(id, takenDecisions);
    takenDecisions.add(given);
    decisions.set(id, given);
  }
  const part = (step: FileStep, task: FilledGroup["task"]): FileStep => {
    const { after, decide, when, ...rest } = step;
    const from: Origin = {
      fragment: fragment.id,
      revision: fragment.revision,
      use,
      part: step.id,
      ...(task && { task: task.id }),
      blanks,
    };
    return {
      ...rest,
      id: idOf.get(step.id) ?? step.id,
      ...(after && {
        after: after.map((one) =>
          typeof one === "string" ? (idOf.get(one) ?? one) : { ...one, step: idOf.get(one.step) ?? one.step },
        ),
      }),
      ...(decide && { decide: { ...decide, id: decisions.get(decide.id) ?? decide.id } }),
      ...(when && {
        when: Object.fromEntries(
          Object.entries(when).map(([decision, outcome]) => [decisions.get(decision) ?? decision, outcome]),
        ),
      }),
      from,
    };
  };
  return groups.map(({ task, steps }) => ({ task, steps: steps.map((step) => part(step, task)) }));
}

/** Where a step came from; `null` for one that was in no fragment. */
export const originOf = (step: Fields): Origin | null => (step["from"] as Origin | undefined) ?? null;

const decisionOf = (step: Fields | FileStep): string | null =>
  (step as { readonly decide?: { readonly id?: string } }).decide?.id ?? null;

/** An id that is not taken: the id itself, or with a number from 2 on. */
export function free(id: string, taken: ReadonlySet<string>): string {
  let next = id;
  for (let number = 2; taken.has(next); number += 1) next = `${id}-${number}`;
  return next;
}
