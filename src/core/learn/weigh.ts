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
  // A literal with a spread and more behind it takes ten times as long, and there are tens of thousands.
  const kept = observations.map((observation, at) =>
    Object.assign(
      { y: Math.log(observation.minutes), weight: byKind[at] ?? 1, off: 0, isOutlier: false },
      observation,
    ),
  );
  const without = beliefsWithout(prior, kept);
  for (const [at, own] of kept.entries()) {
    const others = without[at] ?? prior;
    const distance = (own.y - others.mu) / predictiveScale(others);
    // What was broken off early is not short: it only says that it would have taken longer.
    own.off = own.isBrokenOff ? Math.max(0, distance) : distance;
    own.isOutlier = Math.abs(own.off) > FAR_OFF;
    if (own.isOutlier) own.weight = (own.weight * FAR_OFF) / Math.abs(own.off);
  }
  return kept;
}
