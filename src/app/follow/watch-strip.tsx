import { minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { watchStates } from "../../core/walk/index.ts";
import { message, words } from "../../words/index.ts";
import { callsOf, Worded } from "../parts/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import { GuardedButton } from "./guarded-button.tsx";

/**
 * The watch that is due and has not been noted, or else the next one; one tap notes it. Only one is shown, to leave
 * room for the list.
 */
export function WatchStrip({
  state,
  actions,
  onMore,
}: {
  readonly state: WalkState;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** Opens the list of everything that is due. */
  readonly onMore: () => void;
}) {
  const { outline } = state.ledger.inForce;
  const { pet } = state;
  const watches = watchStates(state);
  const open = watches.filter(({ isOpen }) => isOpen).sort((a, b) => (a.due ?? 0) - (b.due ?? 0));
  const [soonest] = watches.filter(({ isOpen }) => !isOpen).sort((a, b) => a.next - b.next);
  if (pet === null || watches.length === 0) return null;
  return (
    <section className="watch-strip" aria-label={words("follow/watches")}>
      {open.slice(0, 1).map(({ watch, due }) => (
        <span key={watch.id} className="watch-due">
          {due !== null && (
            <Worded
              message={message("follow/due-since", { due, crew: callsOf(outline, watch.by), do: watch.do })}
            />
          )}
          {actions && (
            <GuardedButton onTap={() => void actions.keepWatch(watch.id, due ?? pet)}>
              {words("follow/note-it-done")}
            </GuardedButton>
          )}
          {open.length > 1 && (
            <button type="button" className="plain-button" onClick={onMore}>
              {words("follow/more-due", { count: open.length - 1 })}
            </button>
          )}
        </span>
      ))}
      {open.length === 0 && soonest && (
        <span className="watch-next">
          {words("follow/next-watch", {
            time: minus(soonest.next, pet),
            crew: callsOf(outline, soonest.watch.by),
            do: soonest.watch.do.charAt(0).toLowerCase() + soonest.watch.do.slice(1),
          })}
        </span>
      )}
    </section>
  );
}
