import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { StepRecord } from "../procedure/index.ts";
import { limitsOf, measuredAgainst } from "../quantity/index.ts";

/** Returns a sentence that says which limit of a record a value exceeds, or `null` when it is within the limits. */
export function outOfRangeText(record: StepRecord, value: number): Message | null {
  const { id, label = id } = record;
  const { min, max } = limitsOf(record);
  const taken = { record: label, value: measuredAgainst(record, value) };
  if (min && value < min.value) return message("walk/below", { ...taken, min });
  return max && value > max.value ? message("walk/above", { ...taken, max }) : null;
}
