import type { Outline, Step, StepRecord } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";

/** A record of a step with its place in the file. */
export interface WrittenRecord {
  readonly step: StepId;
  readonly record: StepRecord;
  readonly pointer: string;
}

/** A step as it is written, with its place in the file. */
export interface WrittenStep {
  readonly step: Step;
  readonly pointer: string;
  readonly records: readonly WrittenRecord[];
}

/** Returns all steps of a procedure, those of contingencies last: they are read out like the others. */
export function writtenSteps({ steps, procedure }: Outline): WrittenStep[] {
  const aside = procedure.contingencies.flatMap(({ tasks }, index) =>
    tasks.flatMap((task, taskIndex) =>
      task.steps.map((step, stepIndex) => ({
        step,
        pointer: `/contingencies/${index}/tasks/${taskIndex}/steps/${stepIndex}`,
      })),
    ),
  );
  return [...steps, ...aside].map(({ step, pointer }) => ({
    step,
    pointer,
    records: step.records.map((record, index) => ({
      step: step.id,
      record,
      pointer: `${pointer}/records/${index}`,
    })),
  }));
}
