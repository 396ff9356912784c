import { between, minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { actorsText } from "./actors-text.ts";
import type { FollowActions } from "./follow-actions.ts";
import { GuardedButton } from "./guarded-button.tsx";

/** Over the whole list while the walk is held: why, since when, who called it, and the way to go on. */
export function HeldVeil({
  state,
  actions,
}: {
  readonly state: WalkState;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
}) {
  const { ledger, pet } = state;
  const hold = ledger.holds.at(-1);
  if (!hold || hold.until !== null || ledger.petZero === null || pet === null) return null;
  const since = between(ledger.petZero, hold.from);
  const { crew } = ledger.inForce.outline;
  return (
    <section className="held-veil" aria-label={words("follow/phase-held")}>
      <h2>{words("follow/held-title")}</h2>
      <p className="held-why">{hold.reason || words("follow/held-no-reason")}</p>
      <p>
        {words("follow/held-since", {
          since,
          time: minus(pet, since),
          who: actorsText([hold], crew),
        })}
      </p>
      {actions && (
        <GuardedButton wide onTap={() => void actions.lift()}>
          {words("follow/lift-hold")}
        </GuardedButton>
      )}
    </section>
  );
}
