import type { Change, Contingency, Fields } from "../procedure/index.ts";
import type { Instant, StepId } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { begunSteps, isSpokenOf } from "../walk/index.ts";
import { oneListOf } from "./one-list-of.ts";

/** A contingency that was brought into a walk. */
export interface BroughtContingency {
  /** As it stood in the procedure before it was brought in. */
  readonly contingency: Contingency;
  /** Its steps that are in the plan, in reading order. */
  readonly steps: readonly StepId[];
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
      if (steps.length > 0) found.set(contingency.id, { contingency, steps });
    }
  }
  return [...found.values()];
}

/**
 * Returns the changes that take the steps of a brought contingency which are not begun out of the plan again, and put its tasks
 * of which none is begun back among the contingencies. `null` when there is nothing left to take out.
 */
export function backToPlanChanges(
  ledger: Ledger,
  { contingency, steps }: BroughtContingency,
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
  return oneListOf(ledger.inForce, changes);
}
