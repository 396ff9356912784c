import type { Course } from "../course/index.ts";
import type { Duration, StepId } from "../units/index.ts";

/**
 * A time that a step is bound to ([PRO17]): the PET by which it has to be done, or how long after another step it has to
 * start at the latest.
 */
export type TimeBound =
  | { readonly step: StepId; readonly doneBy: Duration }
  | { readonly step: StepId; readonly after: StepId; readonly within: Duration };

/** A bound of a model, with the positions of its step and of the step that it is counted from; plain, for a worker. */
export interface SampledBound {
  readonly bound: TimeBound;
  readonly at: number;
  /** -1 for a `doneBy`, which is counted from PET 0. */
  readonly from: number;
  readonly most: number;
}

/** The times of some samples. The row of a position has one for each sample. */
interface SampledTimes {
  readonly starts: Float64Array;
  readonly finishes: Float64Array;
  readonly rowOf: (at: number) => number;
}

/** A bound that is broken in some samples. */
export interface BrokenBound {
  readonly bound: TimeBound;
  /** The share of all samples in which it is broken, above zero. */
  readonly share: number;
}

/**
 * The bounds of a network that the rest of a course can still keep or break, in reading order. Left out are the bounds
 * of complete steps, how long after another a step has to start once it has started, and what is counted from a step
 * that is not performed. `positionOf` gives the position of a step by its index, -1 for a step without one.
 */
export function sampledBounds(
  { network, steps }: Pick<Course, "network"> & Partial<Pick<Course, "steps">>,
  positionOf: Int32Array,
): SampledBound[] {
  const { outline } = network;
  return outline.steps.flatMap(({ index, step }) => {
    const at = positionOf[index] ?? -1;
    const stage = steps?.get(step.id)?.stage ?? "planned";
    if (at < 0 || stage === "done" || stage === "skipped") return [];
    const bounds: SampledBound[] = [];
    if (step.doneBy !== undefined)
      bounds.push({ bound: { step: step.id, doneBy: step.doneBy }, at, from: -1, most: step.doneBy });
    for (const { step: after, within } of stage === "planned" ? step.after : []) {
      const from = positionOf[outline.step(after)?.index ?? -1] ?? -1;
      if (within !== null && from >= 0)
        bounds.push({ bound: { step: step.id, after, within }, at, from, most: within });
    }
    return bounds;
  });
}

/**
 * True when a sample of a block breaks a bound. Its times are infinite for a step that fits no window or comes behind
 * one: that is beyond every limit ([PLN5]).
 */
export function isBroken(
  { at, from, most }: SampledBound,
  { starts, finishes, rowOf }: SampledTimes,
  sample: number,
): boolean {
  if (from < 0) return (finishes[rowOf(at) + sample] as number) > most;
  const begins = starts[rowOf(at) + sample] as number;
  return begins === Number.POSITIVE_INFINITY || begins > (finishes[rowOf(from) + sample] as number) + most;
}
