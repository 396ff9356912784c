import type { Step } from "../procedure/index.ts";
import type { HappensBefore } from "./happens-before.ts";

/**
 * Which steps act on each of some subjects (items that are moved, states that are set), and which of them may be the
 * last one to have done so, over all interleavings that the order allows. Steps are reading order indices.
 */
export interface Turns<Subject> {
  /** The steps that act on a subject. */
  of(subject: Subject): readonly number[];
  /** The steps that act on a subject and are concurrent with `step`. */
  concurrent(subject: Subject, step: number): number[];
  /**
   * The steps that may have been the last to act on a subject when `step` begins. `null` among them means that perhaps
   * none has.
   */
  lastBefore(subject: Subject, step: number): (number | null)[];
  /** The steps that may be the last to act on a subject of all; only `null` when no step acts on it. */
  lastOfAll(subject: Subject): (number | null)[];
}

/** The first position in a sorted list from which on `isPast` holds. */
function firstPast(list: readonly number[], isPast: (step: number) => boolean): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isPast(list[middle] ?? -1)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The turns of the steps in a happens-before relation; `subjectsOf` tells what a step acts on. */
export function turnsOf<Subject>(
  order: HappensBefore,
  subjectsOf: (step: Step) => Iterable<Subject>,
): Turns<Subject> {
  const { outline } = order.network;
  const turns = new Map<Subject, number[]>();
  const chains = new Map<Subject, Map<number, number[]>>();
  for (const index of [...order.network.order].sort((a, b) => a - b)) {
    const entry = outline.steps[index];
    if (!entry) continue;
    for (const subject of new Set(subjectsOf(entry.step))) {
      const known = turns.get(subject);
      if (known) known.push(index);
      else turns.set(subject, [index]);
      const lanes = chains.get(subject) ?? new Map<number, number[]>();
      chains.set(subject, lanes);
      // A joint step is listed in one of its lanes only, which is enough to find it. Each list is then a chain of
      // happens-before.
      const lane = entry.performers[0] ?? -1;
      const chain = lanes.get(lane);
      if (chain) chain.push(index);
      else lanes.set(lane, [index]);
    }
  }
  const aroundOf = (subject: Subject, step: number) =>
    [...(chains.get(subject)?.values() ?? [])].map((chain) => {
      const from = firstPast(chain, (other) => !order.before(other, step));
      const to = firstPast(chain, (other) => order.before(step, other));
      return {
        last: chain[from - 1] ?? null,
        concurrent: chain.slice(from, to).filter((one) => one !== step),
      };
    });
  const latestOf = (steps: readonly number[]): (number | null)[] =>
    steps.length === 0 ? [null] : steps.filter((one) => !steps.some((other) => order.before(one, other)));
  return {
    of: (subject) => turns.get(subject) ?? [],
    concurrent: (subject, step) => aroundOf(subject, step).flatMap(({ concurrent }) => concurrent),
    lastBefore: (subject, step) => {
      const around = aroundOf(subject, step);
      return [
        ...latestOf(around.flatMap(({ last }) => last ?? [])),
        ...around.flatMap(({ concurrent }) => concurrent),
      ];
    },
    lastOfAll: (subject) =>
      latestOf([...(chains.get(subject)?.values() ?? [])].flatMap((chain) => chain.at(-1) ?? [])),
  };
}
