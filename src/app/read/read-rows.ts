import type { CourseStep, Wait } from "../../core/course/index.ts";
import { waitsBefore } from "../../core/course/index.ts";
import type { Plan, Slack } from "../../core/plan/index.ts";
import type { Finding, Outline, OutlineStep, Task } from "../../core/procedure/index.ts";
import type { BraidRow } from "../braid/index.ts";

/** A heading above the steps of a task. */
export interface TaskHeading extends BraidRow {
  readonly kind: "task";
  readonly task: Task;
  readonly number: number;
}

/** A step as prepared. */
export interface PreparedStep extends BraidRow {
  readonly kind: "step";
  readonly entry: OutlineStep;
  /** `null` when the step is not in the plan: it is in another branch or a get-ahead, or there is no plan. */
  readonly planned: CourseStep | null;
  /** `null` when the step is not in the plan. */
  readonly slack: Slack | null;
  readonly waits: readonly Wait[];
  readonly findings: readonly Finding[];
}

/** A row of a procedure on the reading screen. */
export type ReadRow = TaskHeading | PreparedStep;

/** The rows of a procedure in reading order, each step with its planned times and the findings that concern it. */
export function readRows(outline: Outline, plan: Plan, findings: readonly Finding[]): ReadRow[] {
  let task: Task | null = null;
  const { timeline } = plan;
  return outline.steps.flatMap((entry): ReadRow[] => {
    const row: PreparedStep = {
      kind: "step",
      key: entry.step.id,
      lanes: entry.performers,
      stage: entry.step.when ? "maybe" : "later",
      entry,
      planned: timeline?.course.steps.get(entry.step.id) ?? null,
      slack: timeline?.slack.get(entry.step.id) ?? null,
      waits: timeline ? waitsBefore(timeline.course, entry.step.id) : [],
      findings: findings.filter(({ steps }) => steps.includes(entry.step.id)),
    };
    if (entry.task === task) return [row];
    task = entry.task;
    const number = Number(entry.number.split(".")[0]);
    return [{ kind: "task", key: `task ${task.id}`, lanes: [], stage: "later", task, number }, row];
  });
}
