import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { StepRecord } from "../procedure/index.ts";

/** Returns a sentence that says which limit of a record a value exceeds, or `null` when it is within the limits. */
export function outOfRangeText(
  { id, label = id, unit, min, max }: StepRecord,
  value: number,
): Message | null {
  const taken = { record: label, value };
  if (min !== undefined && value < min)
    return unit === "1"
      ? message("walk/below", { ...taken, min })
      : message("walk/below-in-unit", { ...taken, min, unit });
  if (max === undefined || value <= max) return null;
  return unit === "1"
    ? message("walk/above", { ...taken, max })
    : message("walk/above-in-unit", { ...taken, max, unit });
}
