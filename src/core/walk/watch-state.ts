import type { Watch } from "../procedure/index.ts";
import type { Duration, Instant, StepId } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import type { WalkState } from "./walk-state.ts";

/** An active watch, and when it is due. Times are PET. */
export interface WatchState {
  readonly watch: Watch;
  /** When it was last due; `null` when it has not been due yet. */
  readonly due: Duration | null;
  /** True when it was due and nobody has kept it since. */
  readonly isOpen: boolean;
  /** When it is due next. */
  readonly next: Duration;
}

/**
 * Logs of earlier versions have no fact for a kept watch. They have a note instead, whose text is the action of the
 * watch followed by this suffix.
 */
const KEPT_IN_NOTE = ": done";

/** Returns the instants at which a watch was kept, in no particular order. */
function keptAt(ledger: Ledger, watch: Watch): readonly Instant[] {
  return [
    ...[...ledger.keptWatches].filter((kept) => kept.watch === watch.id),
    ...[...ledger.notes].filter(({ text }) => text === watch.do + KEPT_IN_NOTE),
  ].map(({ at }) => at);
}

/**
 * Returns the active watches. A watch is active from the completion of `from` (from PET 0 without one) until the
 * completion of `until`, and is due each time `every` has passed. It is open until somebody keeps it after the last
 * time it was due.
 */
export function watchStates({ ledger, pet }: WalkState): WatchState[] {
  const { petZero } = ledger;
  if (petZero === null || pet === null || ledger.phase === "closed") return [];
  const completed = (step: StepId | undefined): Instant | null =>
    step === undefined ? null : progressOf(ledger, step).finish;
  return ledger.inForce.outline.procedure.watches.flatMap((watch): WatchState[] => {
    const begun = watch.from === undefined ? petZero : completed(watch.from);
    if (begun === null || completed(watch.until) !== null) return [];
    const from = between(petZero, begun);
    const rounds = Math.floor((pet - from) / watch.every);
    const due = rounds >= 1 ? ((from + rounds * watch.every) as Duration) : null;
    const next = (from + Math.max(1, rounds + 1) * watch.every) as Duration;
    const isKept = due !== null && keptAt(ledger, watch).some((at) => between(petZero, at) >= due);
    return [{ watch, due, isOpen: due !== null && !isKept, next }];
  });
}
