import { clockText, hourMinuteText, minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { watchNote, watchStates } from "../../core/walk/index.ts";
import { callsOf } from "../parts/index.ts";
import type { FollowActions } from "./follow-actions.ts";

/** Watches that are due and have not been noted, and the one that comes next; one tap notes one. */
export function WatchStrip({
  state,
  actions,
}: {
  readonly state: WalkState;
  readonly actions: FollowActions;
}) {
  const { outline } = state.ledger.opened;
  const { pet } = state;
  const watches = watchStates(state);
  const open = watches.filter(({ isOpen }) => isOpen);
  const [soonest] = watches.filter(({ isOpen }) => !isOpen).sort((a, b) => a.next - b.next);
  if (pet === null || watches.length === 0) return null;
  return (
    <section className="watch-strip" aria-label="Watches">
      {open.map(({ watch, due }) => (
        <span key={watch.id} className="watch-due">
          <b>Due since {due === null ? "" : hourMinuteText(due)}</b> {callsOf(outline, watch.by)}: {watch.do}
          <button
            type="button"
            className="plain-button"
            onClick={() => void actions.note(watchNote(watch), null)}
          >
            Note it done
          </button>
        </span>
      ))}
      {open.length === 0 && soonest && (
        <span className="watch-next">
          Next watch in {clockText(minus(soonest.next, pet))}: {callsOf(outline, soonest.watch.by)},{" "}
          {soonest.watch.do.charAt(0).toLowerCase() + soonest.watch.do.slice(1)}
        </span>
      )}
    </section>
  );
}
