import type { StepId } from "../units/index.ts";
import { jsonPointer } from "./json-pointer.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";

/** A step of a file that may have any shape, with its place in the procedure. */
export interface RawStep {
  readonly part: RawPart;
  readonly id: string | null;
  /** Index in reading order, with the steps of contingencies last. */
  readonly index: number;
  /** JSON Pointer to the step's task. */
  readonly task: string;
  readonly getAhead: boolean;
  /** Index of the contingency that the step belongs to; `null` in the main tasks. */
  readonly contingency: number | null;
}

/** The id of a part; `null` when it has none that is text. */
export const idOf = (part: RawPart): string | null => textOf(member(part, "id"));

/** A step as a finding names it; empty when it has no id. */
export const namedStep = (step: RawStep): StepId[] => (step.id === null ? [] : [step.id as StepId]);

/** The steps of a file of any shape, in reading order, with the steps of contingencies last. */
export function rawSteps(root: RawPart): RawStep[] {
  const found: RawStep[] = [];
  const read = (holder: RawPart, contingency: number | null) => {
    for (const task of entries(member(holder, "tasks"))) {
      for (const part of entries(member(task, "steps"))) {
        found.push({
          part,
          id: idOf(part),
          index: found.length,
          task: jsonPointer(task.path),
          getAhead: textOf(member(task, "priority")) === "get-ahead",
          contingency,
        });
      }
    }
  };
  read(root, null);
  for (const [index, contingency] of entries(member(root, "contingencies")).entries())
    read(contingency, index);
  return found;
}
