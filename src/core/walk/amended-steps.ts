import { sameJson } from "../changes/index.ts";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import type { AmendedHow, AmendedStep } from "./amendment.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** A step as the file has it, and the task it stands in. */
export interface WrittenStep {
  readonly step: FileStep;
  readonly task: string;
}

/** Returns the steps of the plan as the file has them, by id, in reading order. */
export function writtenStepsOf({ tasks }: Pick<ProcedureFile, "tasks">): ReadonlyMap<StepId, WrittenStep> {
  return new Map(
    tasks.flatMap(({ id: task, steps }) => steps.map((step) => [step.id as StepId, { step, task }] as const)),
  );
}

/** The ids of what changes move in a list. */
const movedIn = (list: "steps" | "tasks", changes: readonly Change[]): ReadonlySet<string> =>
  new Set(
    changes.flatMap((change) => ("move" in change && (change.list ?? "steps") === list ? [change.move] : [])),
  );

/** Returns the steps that changes made otherwise: those of the plan in reading order, then the dropped ones. */
export function amendedSteps(
  before: ProcedureFile,
  after: ProcedureFile,
  changes: readonly Change[],
): readonly AmendedStep[] {
  const [old, next] = [writtenStepsOf(before), writtenStepsOf(after)];
  const contingent = writtenStepsOf({ tasks: (before.contingencies ?? []).flatMap(({ tasks }) => tasks) });
  const moved = { steps: movedIn("steps", changes), tasks: movedIn("tasks", changes) };
  const howOf = (id: StepId, { step, task }: WrittenStep): AmendedHow | null => {
    const was = old.get(id);
    if (!was) return contingent.has(id) ? "brought" : "added";
    if (!sameJson(was.step.by, step.by)) return "reassigned";
    if (was.task !== task || moved.steps.has(id) || moved.tasks.has(task)) return "moved";
    return was.step === step || sameJson(was.step, step) ? null : "changed";
  };
  const touched = [...next].flatMap(([step, written]): AmendedStep[] => {
    const how = howOf(step, written);
    return how === null ? [] : [{ step, how }];
  });
  const dropped = [...old.keys()].filter((step) => !next.has(step));
  return [...touched, ...dropped.map((step): AmendedStep => ({ step, how: "dropped" }))];
}
