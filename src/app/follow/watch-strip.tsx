import { minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { watchStates } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

/** The watch that comes round next. One that is due is an alert. */
export function WatchStrip({ state }: { readonly state: WalkState }) {
  const { outline } = state.ledger.inForce;
  const { pet } = state;
  const [soonest] = watchStates(state).sort((a, b) => a.next - b.next);
  if (pet === null || !soonest) return null;
  return (
    <section className="watch-strip" aria-label={words("follow/watches")}>
      <span className="watch-next">
        {words("follow/next-watch", {
          time: minus(soonest.next, pet),
          crew: callsOf(outline, soonest.watch.by),
          do: soonest.watch.do.charAt(0).toLowerCase() + soonest.watch.do.slice(1),
        })}
      </span>
    </section>
  );
}
