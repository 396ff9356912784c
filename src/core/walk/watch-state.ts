import type { Watch } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { WalkState } from "./walk-state.ts";

/** A watch that is on, and when it comes round; PET. */
export interface WatchState {
  readonly watch: Watch;
  /** When it was last due; `null` when it has not been yet. */
  readonly due: Duration | null;
  /** True when it was due and nobody has noted it since. */
  readonly isOpen: boolean;
  /** When it is due next. */
  readonly next: Duration;
}

/** The text of the note that says a watch was kept. */
export function watchNote(watch: Watch): string {
  return `${watch.do}: done`;
}

/**
 * The watches that are on: from the completion of `from` (PET 0 without one) until that of `until`, coming round every `every`.
 * That one was kept is a note of its own ({@link watchNote}) made since it was due; the log has no other word for it.
 */
export function watchStates({ ledger, pet }: WalkState): WatchState[] {
  const { petZero } = ledger;
  if (petZero === null || pet === null || ledger.phase === "closed") return [];
  const completed = (step: string | undefined): Instant | null => {
    const index = step === undefined ? undefined : ledger.opened.outline.step(step)?.index;
    return index === undefined ? null : (ledger.steps[index]?.finish ?? null);
  };
  return ledger.opened.outline.procedure.watches.flatMap((watch): WatchState[] => {
    const begun = watch.from === undefined ? petZero : completed(watch.from);
    if (begun === null || completed(watch.until) !== null) return [];
    const from = between(petZero, begun);
    const rounds = Math.floor((pet - from) / watch.every);
    const due = rounds >= 1 ? ((from + rounds * watch.every) as Duration) : null;
    const next = (from + Math.max(1, rounds + 1) * watch.every) as Duration;
    const isKept = ledger.notes.some(
      ({ text, at }) => due !== null && text === watchNote(watch) && between(petZero, at) >= due,
    );
    return [{ watch, due, isOpen: due !== null && !isKept, next }];
  });
}
