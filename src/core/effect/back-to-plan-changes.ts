import type { Change, Contingency, Fields, ProcedureFile } from "../procedure/index.ts";
import type { Instant, StepId } from "../units/index.ts";
import type { LaidOutProcedure, Ledger } from "../walk/index.ts";
import { begunSteps, isSpokenOf } from "../walk/index.ts";
import { oneListOf } from "./one-list-of.ts";

/** A contingency that was brought into a walk. */
export interface BroughtContingency {
  /** As it stood in the procedure before it was brought in. */
  readonly contingency: Contingency;
  /** Its steps that are in the plan, in reading order. */
  readonly steps: readonly StepId[];
  /** The tasks that were made of what was put off for it, each with the task that it was put off from. */
  readonly putOff: readonly { readonly rest: string; readonly task: string }[];
}

/** Returns the contingencies of which steps are in the plan since an amendment brought them in, the latest first. */
export function broughtContingencies(ledger: Ledger): readonly BroughtContingency[] {
  const { outline } = ledger.inForce;
  const found = new Map<string, BroughtContingency>();
  for (const { changes, before } of ledger.amendments.toReversed()) {
    for (const change of changes) {
      if (!("bring" in change) || found.has(change.bring)) continue;
      const contingency = before.outline.procedure.contingencies.find(({ id }) => id === change.bring);
      if (!contingency) continue;
      const own = new Set(contingency.tasks.flatMap(({ steps }) => steps.map(({ id }) => id)));
      const steps = outline.steps.flatMap(({ step }) => (own.has(step.id) ? [step.id] : []));
      if (steps.length > 0)
        found.set(contingency.id, { contingency, steps, putOff: putOffBy(changes, before) });
    }
  }
  return [...found.values()];
}

/** Tasks that changes add, each with the task from which its first step came. */
function putOffBy(changes: readonly Change[], { outline }: LaidOutProcedure): BroughtContingency["putOff"] {
  return changes.flatMap((change) => {
    if (!("move" in change) || typeof change.first !== "string") return [];
    const task = outline.step(change.move as StepId)?.task.id;
    return task === undefined ? [] : [{ rest: change.first, task }];
  });
}

/**
 * Returns the changes that take the steps of a brought contingency which are not begun out of the plan again, and put its tasks
 * of which none is begun back among the contingencies. Where all of it goes, what was put off for it and is not begun goes
 * back into its task. `null` when there is nothing left to take out.
 */
export function backToPlanChanges(
  ledger: Ledger,
  { contingency, steps, putOff }: BroughtContingency,
  at: Instant,
): readonly Change[] | null {
  const { outline, file } = ledger.inForce;
  const { complete, working } = begunSteps(ledger, at);
  const isOpen = (id: StepId) => !complete.has(id) && !working.has(id) && !isSpokenOf(ledger, id);
  const open = new Set(steps.filter(isOpen));
  if (open.size === 0) return null;
  const changes: Change[] = [];
  const back: Fields[] = [];
  for (const { id, steps: inTask } of contingency.tasks) {
    const task = file.tasks.find((one) => one.id === id);
    const isWhole = task?.steps.length === inTask.length && inTask.every((one) => open.has(one.id));
    if (task && isWhole) {
      changes.push({ drop: id, list: "tasks" });
      back.push(task);
    } else
      for (const one of inTask) if (open.has(one.id) && outline.step(one.id)) changes.push({ drop: one.id });
  }
  if (back.length > 0) {
    const { id, title, when } = contingency;
    const add = { id, title, ...(when === undefined ? {} : { when }), tasks: back };
    changes.push({ add, list: "contingencies", first: true });
  }
  if (open.size === steps.length) changes.push(...putOff.flatMap((one) => takenUpAgain(file, one, isOpen)));
  return oneListOf(ledger.inForce, changes);
}

/** The changes that bring the steps of a task that was put off back behind those of the task they came from. */
function takenUpAgain(
  { tasks }: ProcedureFile,
  { rest, task }: BroughtContingency["putOff"][number],
  isOpen: (step: StepId) => boolean,
): readonly Change[] {
  const stepsOf = (id: string) => tasks.find((one) => one.id === id)?.steps.map((step) => step.id) ?? [];
  const back = stepsOf(rest);
  const last = stepsOf(task).at(-1);
  if (last === undefined || back.length === 0 || !back.every((step) => isOpen(step as StepId))) return [];
  return [
    ...back.map((move, index): Change => ({ move, behind: back[index - 1] ?? last })),
    { drop: rest, list: "tasks" },
  ];
}
