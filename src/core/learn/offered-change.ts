import type { FieldChange, StepTime } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { formatDuration } from "../units/index.ts";
import type { LearnedStep } from "./learn-from.ts";
import type { ProposedTime } from "./proposal.ts";

const SECOND = 1000;
const MINUTE = 60_000;

/** Returns a moved time as it is offered: up to whole seconds, so that no figure comes out shorter than it was found ([LRN3]). */
export function offeredTime({ low, likely, high }: ProposedTime): StepTime {
  const whole = (minutes: number) =>
    // A figure of whole seconds is not made one second longer by the last digit of its logarithm.
    (Math.ceil((minutes * MINUTE) / SECOND - 1e-6) * SECOND) as Duration;
  return { low: whole(low), likely: whole(likely), high: whole(high) };
}

/** Returns the change that accepts what is offered for a step; `null` where nothing is ([LRN3]). */
export function offeredChange({ entry, moved, offer }: LearnedStep): FieldChange | null {
  if (offer !== "offered") return null;
  const { low, likely, high } = offeredTime(moved);
  const time =
    low === high
      ? formatDuration(likely)
      : { low: formatDuration(low), likely: formatDuration(likely), high: formatDuration(high) };
  return { change: entry.step.id, set: { time } };
}
