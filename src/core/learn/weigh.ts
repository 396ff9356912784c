import type { Observation } from "./observation.ts";
import type { Belief } from "./step-model.ts";
import { beliefsWithout, predictiveScale } from "./step-model.ts";

/** An observation with what it weighs ([LRN2]). */
export interface Weighed extends Observation {
  /** ln(minutes). */
  readonly y: number;
  readonly weight: number;
  /** How far it is off what the others let expect, in scales of their predictive distribution; below zero when shorter. */
  readonly off: number;
  /** True when it is so far off that it weighs less. */
  readonly isOutlier: boolean;
}

/** An observation further off than this weighs less by as much. */
const FAR_OFF = 3;

/** Returns what each observation of a step weighs by its kind alone: a live walk 1, each of n rehearsals 1/(1 + n). */
export function weightsByKind(observations: readonly Observation[]): readonly number[] {
  const rehearsals = observations.filter(({ mode }) => mode === "rehearsal").length;
  return observations.map(({ mode }) => (mode === "live" ? 1 : 1 / (1 + rehearsals)));
}

/** Returns the observations of a step with their weights; those far off what the others say weigh less, and none is left out. */
export function weighed(prior: Belief, observations: readonly Observation[]): readonly Weighed[] {
  const byKind = weightsByKind(observations);
  const logs = observations.map(({ minutes, isBrokenOff }, at) => ({
    y: Math.log(minutes),
    weight: byKind[at] ?? 1,
    isBrokenOff,
  }));
  const without = beliefsWithout(prior, logs);
  return observations.map((observation, at): Weighed => {
    const own = logs[at] ?? { y: 0, weight: 1, isBrokenOff: false };
    const others = without[at] ?? prior;
    const distance = (own.y - others.mu) / predictiveScale(others);
    // What was broken off early is not short: it only says that it would have taken longer.
    const off = own.isBrokenOff ? Math.max(0, distance) : distance;
    const isOutlier = Math.abs(off) > FAR_OFF;
    return {
      ...observation,
      y: own.y,
      weight: isOutlier ? (own.weight * FAR_OFF) / Math.abs(off) : own.weight,
      off,
      isOutlier,
    };
  });
}
