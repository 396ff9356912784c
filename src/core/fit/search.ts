import type { Task } from "../procedure/index.ts";
import type { TaskId } from "../units/index.ts";
import type { ValueOf, WorthBound } from "./worth-bound.ts";

/** A set of choices and what it is worth. */
export interface KeptSet {
  readonly kept: ReadonlySet<TaskId>;
  readonly worth: number;
}

/** What a search found. */
export interface Found {
  /** The sets that are worth most, best first; the smaller of two that are worth the same first. */
  readonly best: readonly KeptSet[];
  /** No set that fits is worth more. */
  readonly bound: number;
  /** True when every set was looked at or shown to be worth less. */
  readonly isProven: boolean;
  /** How many sets were looked at. */
  readonly tried: number;
}

/** The rules of a search. */
export interface SearchRules {
  /** The choices, in the order in which they are looked at. */
  readonly order: readonly Task[];
  /** What each choice counts for. */
  readonly value: ValueOf;
  readonly bound: WorthBound;
  /**
   * Whether a set fits. A set with more tasks never fits where a part of it does not, since another task never makes
   * anything earlier.
   */
  fits(kept: ReadonlySet<TaskId>): boolean;
  /** Whether a set that fits breaks nothing else. Here another task may mend what is missing. */
  isSound(kept: ReadonlySet<TaskId>): boolean;
  /** How many sets are wanted. */
  readonly wanted: number;
  /** How many sets may be looked at. */
  readonly tries: number;
}

/**
 * Looks for the sets of choices that are worth most, by branch and bound (Land and Doig 1960). Each set is reached once:
 * from the set without its last task. It goes no further from a set that does not fit, nor where the bound shows that
 * nothing better is to come. No set at all fits where the empty one does not: `best` is then empty.
 */
export function searchSets({ order, value, bound, fits, isSound, wanted, tries }: SearchRules): Found {
  const best: KeptSet[] = [];
  let [tried, missed] = [0, Number.NEGATIVE_INFINITY];
  const threshold = () => (best.length < wanted ? Number.NEGATIVE_INFINITY : (best.at(-1)?.worth ?? 0));
  const offer = (set: KeptSet) => {
    if (set.worth <= threshold() || !isSound(set.kept)) return;
    const place = best.findIndex(
      ({ worth, kept }) => worth < set.worth || (worth === set.worth && kept.size > set.kept.size),
    );
    best.splice(place === -1 ? best.length : place, 0, set);
    best.length = Math.min(best.length, wanted);
  };
  const extend = (set: KeptSet, from: number): void => {
    for (const [offset, task] of order.slice(from).entries()) {
      const position = from + offset;
      const most = set.worth + bound.beyond(set.kept, position);
      if (most <= threshold()) return;
      if (tried >= tries) {
        missed = Math.max(missed, most);
        return;
      }
      tried += 1;
      const next = { kept: new Set([...set.kept, task.id]), worth: set.worth + value(task) };
      if (!fits(next.kept)) continue;
      offer(next);
      extend(next, position + 1);
    }
  };
  const none: KeptSet = { kept: new Set(), worth: 0 };
  tried += 1;
  if (!fits(none.kept)) return { best, bound: 0, isProven: true, tried };
  offer(none);
  extend(none, 0);
  const reached = best[0]?.worth ?? 0;
  return { best, bound: Math.max(reached, missed), isProven: missed <= reached, tried };
}
