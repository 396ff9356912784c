import type { Watch } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
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

/** The rounds of a watch up to a PET, in order. */
export interface WatchRounds {
  readonly watch: Watch;
  /** The completion of `from`, or PET 0 without one. */
  readonly begun: Duration;
  /** True when the watch was over by then, because `until` was complete. */
  readonly isOver: boolean;
  readonly rounds: readonly { readonly due: Duration; readonly isKept: boolean }[];
}

/**
 * Logs of earlier versions have no fact for a kept watch. They have a note instead, whose text is the action of the
 * watch followed by this suffix.
 */
const KEPT_IN_NOTE = ": done";

/**
 * Returns the watches that began by a PET, with each round that fell due by then. A round at the moment at which the
 * watch is over does not fall due. A round is kept by an entry made from its due time on and before the next one, or
 * by a later one that names its due time. Returns no watch before the clock is started.
 */
export function watchRounds(ledger: Ledger, pet: Duration): readonly WatchRounds[] {
  const { petZero } = ledger;
  if (petZero === null) return [];
  const completed = (step: StepId | undefined): Duration | null => {
    const finish = step === undefined ? null : progressOf(ledger, step).finish;
    return finish === null ? null : between(petZero, finish);
  };
  return ledger.inForce.outline.procedure.watches.flatMap((watch): WatchRounds[] => {
    const begun = watch.from === undefined ? (0 as Duration) : completed(watch.from);
    if (begun === null || begun > pet || watch.every <= 0) return [];
    const over = completed(watch.until);
    const count = Math.max(
      0,
      over === null || over > pet
        ? Math.floor((pet - begun) / watch.every)
        : Math.ceil((over - begun) / watch.every) - 1,
    );
    const kept = keptAt(ledger, watch);
    const rounds = Array.from({ length: count }, (_, index) => {
      const due = (begun + (index + 1) * watch.every) as Duration;
      const isKept = kept.some(
        ({ at, of }) => at >= due && (at < due + watch.every || (of !== null && Math.abs(of - due) < 1000)),
      );
      return { due, isKept };
    });
    return [{ watch, begun, isOver: over !== null && over <= pet, rounds }];
  });
}

/** Returns the PETs at which a watch was kept, each with the round it was entered for; `null` in logs that tell none. */
function keptAt(
  ledger: Ledger,
  watch: Watch,
): readonly { readonly at: Duration; readonly of: Duration | null }[] {
  const { petZero, keptWatches, notes } = ledger;
  if (petZero === null) return [];
  return [
    ...[...keptWatches]
      .filter((kept) => kept.watch === watch.id)
      .map(({ at, due }) => ({ at: between(petZero, at), of: due })),
    ...[...notes]
      .filter(({ text }) => text === watch.do + KEPT_IN_NOTE)
      .map(({ at }) => ({ at: between(petZero, at), of: null })),
  ];
}

/**
 * Returns the active watches. A watch is active from the completion of `from` (from PET 0 without one) until the
 * completion of `until`, and is due each time `every` has passed. It is open while its last round has not been kept.
 */
export function watchStates({ ledger, pet }: Pick<WalkState, "ledger" | "pet">): WatchState[] {
  if (pet === null || ledger.phase === "closed") return [];
  return watchRounds(ledger, pet).flatMap(({ watch, begun, isOver, rounds }): WatchState[] => {
    if (isOver) return [];
    const last = rounds.at(-1) ?? null;
    return [
      {
        watch,
        due: last?.due ?? null,
        isOpen: last !== null && !last.isKept,
        next: (begun + (rounds.length + 1) * watch.every) as Duration,
      },
    ];
  });
}
