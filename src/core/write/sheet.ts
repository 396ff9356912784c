import type { ProcedureFile } from "../procedure/index.ts";

/** A step, task and contingency as written in the file. */
export type FileTask = ProcedureFile["tasks"][number];
export type FileStep = FileTask["steps"][number];
export type FileContingency = NonNullable<ProcedureFile["contingencies"]>[number];

/** The heading of a contingency, of a task, or a step: a row of the table in which a procedure is written ([WRT2]). */
export type SheetRow =
  | { readonly kind: "contingency"; readonly key: string; readonly contingency: FileContingency }
  | {
      readonly kind: "task";
      readonly key: string;
      readonly task: FileTask;
      /** As printed, from 1; with the contingency before it where it stands in one. */
      readonly number: string;
      /** The contingency it stands in; `null` for one of the plan. */
      readonly contingency: string | null;
    }
  | {
      readonly kind: "step";
      readonly key: string;
      readonly step: FileStep;
      readonly number: string;
      readonly task: string;
      readonly contingency: string | null;
    };

/** The key of the row of a task: ids of tasks and steps may be alike. */
export const taskKey = (id: string): string => `task:${id}`;

/** The key of the heading of a contingency. */
export const contingencyKey = (id: string): string => `contingency:${id}`;

function rowsOfTasks(tasks: readonly FileTask[], before: string, contingency: string | null): SheetRow[] {
  return tasks.flatMap((task, index): SheetRow[] => {
    const number = `${before}${index + 1}`;
    return [
      { kind: "task", key: taskKey(task.id), task, number, contingency },
      ...task.steps.map(
        (step, at): SheetRow => ({
          kind: "step",
          key: step.id,
          step,
          number: `${number}.${at + 1}`,
          task: task.id,
          contingency,
        }),
      ),
    ];
  });
}

/** The rows of a procedure in reading order, contingencies behind the plan. The key of a step's row is its id. */
export function sheetOf(file: ProcedureFile): SheetRow[] {
  return [
    ...rowsOfTasks(file.tasks, "", null),
    ...(file.contingencies ?? []).flatMap((contingency, index): SheetRow[] => [
      { kind: "contingency", key: contingencyKey(contingency.id), contingency },
      ...rowsOfTasks(contingency.tasks, `C${index + 1}.`, contingency.id),
    ]),
  ];
}

/** All tasks of a file in reading order, those of contingencies last. */
export const tasksOf = ({ tasks, contingencies = [] }: ProcedureFile): readonly FileTask[] => [
  ...tasks,
  ...contingencies.flatMap((one) => one.tasks),
];

/** A step with the task that it stands in and its place there. */
export interface PlacedStep {
  readonly step: FileStep;
  readonly task: FileTask;
  /** From 0. */
  readonly index: number;
}

/** Where a step stands; `null` when there is none of that id. */
export function placedStep(file: ProcedureFile, id: string): PlacedStep | null {
  for (const task of tasksOf(file)) {
    const index = task.steps.findIndex((step) => step.id === id);
    const step = task.steps[index];
    if (step) return { step, task, index };
  }
  return null;
}
