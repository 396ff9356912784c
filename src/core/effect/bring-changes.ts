import { group } from "d3-array";
import type { Change, Contingency, Outline, OutlineStep, Task } from "../procedure/index.ts";
import type { CrewId, Instant, StepId } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { begunSteps } from "../walk/index.ts";
import { oneListOf } from "./one-list-of.ts";

/** How a contingency is brought in. */
export interface Bringing {
  /** The step in hand behind which its tasks stand: the last one that its crew has begun, or the first of the plan. */
  readonly behind: StepId;
  readonly changes: readonly Change[];
}

/**
 * Returns the changes that bring a contingency into a walk behind the step in hand ([CHG1]), so that its crew comes to it
 * as soon as what is begun is done. What its crew has still to do of the work that it interrupts stands behind it, in the same
 * order. `null` when the contingency is not in the procedure in force, as when it was brought in already.
 */
export function bringChanges(ledger: Ledger, contingency: Contingency, at: Instant): Bringing | null {
  const { inForce } = ledger;
  const { outline } = inForce;
  if (!outline.procedure.contingencies.some(({ id }) => id === contingency.id)) return null;
  const crew = new Set<CrewId>(contingency.tasks.flatMap(({ steps }) => steps.flatMap(({ by }) => by)));
  const { complete, working } = begunSteps(ledger, at);
  const hasBegun = ({ step: { id } }: OutlineStep) => complete.has(id) || working.has(id);
  const isOfCrew = ({ step: { by } }: OutlineStep) => by.some((one) => crew.has(one));
  const behind = outline.steps.findLast((one) => isOfCrew(one) && hasBegun(one)) ?? outline.steps[0];
  if (!behind) return null;
  const last = outline.steps.findLastIndex(({ task }) => task === behind.task);
  const open = outline.steps.slice(0, last + 1).filter((one) => !hasBegun(one));
  const interrupted = open.some(isOfCrew) ? open : [];
  const bring: Change = { bring: contingency.id, behind: behind.step.id };
  const lastTask = contingency.tasks.at(-1)?.id ?? behind.task.id;
  const changes = [bring, ...putOff(outline, interrupted, lastTask)];
  return { behind: behind.step.id, changes: oneListOf(inForce, changes) };
}

/** The changes that put steps behind a task, in their order: whole tasks as they are, and the rest of others in a task of its own. */
function putOff(outline: Outline, steps: readonly OutlineStep[], behind: string): readonly Change[] {
  const byTask = group(steps, ({ task }) => task);
  const ids = new Set<string>(taskIdsOf(outline));
  const changes: Change[] = [];
  let last = behind;
  for (const [task, rest] of byTask) {
    if (rest.length === task.steps.length) {
      changes.push({ move: task.id, list: "tasks", behind: last });
      last = task.id;
      continue;
    }
    const id = freeId(`${task.id}-rest`, ids);
    ids.add(id);
    changes.push({ add: { ...headOf(task), id, steps: [] }, list: "tasks", behind: last });
    let before: string | null = null;
    for (const { step } of rest) {
      changes.push({ move: step.id, ...(before === null ? { first: id } : { behind: before }) });
      before = step.id;
    }
    last = id;
  }
  return changes;
}

/** What the rest of a task takes over from it. */
const headOf = ({ title, priority, closeout, worth }: Task) => ({
  title,
  ...(priority === "essential" ? {} : { priority }),
  ...(closeout ? { closeout } : {}),
  ...(worth === undefined ? {} : { worth }),
});

const taskIdsOf = ({ procedure: { tasks, contingencies } }: Outline): readonly string[] =>
  [...tasks, ...contingencies.flatMap((one) => one.tasks)].map(({ id }) => id);

function freeId(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted)) return wanted;
  let number = 2;
  while (taken.has(`${wanted}-${number}`)) number += 1;
  return `${wanted}-${number}`;
}
