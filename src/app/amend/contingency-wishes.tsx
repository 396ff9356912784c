import { backToPlanChanges, bringChanges, broughtContingencies } from "../../core/effect/index.ts";
import type { Contingency, Outline } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import type { Wish } from "./wish.ts";

/** The wish to bring a contingency in behind the step in hand; `null` when it is in the plan already. `outline` names what is meant. */
export function bringing(
  ledger: Ledger,
  contingency: Contingency,
  at: Instant,
  outline: Outline = ledger.inForce.outline,
): Wish | null {
  const bring = bringChanges(ledger, contingency, at);
  if (!bring) return null;
  const behind = outline.step(bring.behind);
  return {
    says: words("amending/brought", {
      contingency: titleIn(outline, contingency),
      behind: behind
        ? words("amending/step-name", { number: behind.number, action: behind.step.do })
        : bring.behind,
    }),
    changes: bring.changes,
  };
}

const titleIn = ({ procedure }: Outline, { id, title }: Contingency): string =>
  procedure.contingencies.find((one) => one.id === id)?.title ?? title;

/** Contingencies to bring in, and those that were, to be taken out again as far as they are not begun ([AMD1]). */
export function ContingencyWishes({
  ledger,
  outline,
  at,
  onWish,
}: {
  readonly ledger: Ledger;
  /** The plan as it is shown. */
  readonly outline: Outline;
  readonly at: Instant;
  readonly onWish: (wish: Wish) => void;
}) {
  const { contingencies } = ledger.inForce.outline.procedure;
  const back = broughtContingencies(ledger).flatMap((brought) => {
    const changes = backToPlanChanges(ledger, brought, at);
    const { contingency } = brought;
    return changes ? [{ id: contingency.id, title: titleIn(outline, contingency), changes }] : [];
  });
  if (contingencies.length === 0 && back.length === 0)
    return <p className="hint">{words("amending/no-contingencies")}</p>;
  return (
    <div className="panel-acts">
      {back.map(({ id, title, changes }) => (
        <button
          key={`back ${id}`}
          type="button"
          className="plain-button"
          onClick={() => onWish({ says: words("amending/back", { contingency: title }), changes })}
        >
          {words("amending/go-back", { contingency: title })}
        </button>
      ))}
      {contingencies.map((contingency) => (
        <button
          key={contingency.id}
          type="button"
          className="plain-button"
          onClick={() => {
            const wish = bringing(ledger, contingency, at, outline);
            if (wish) onWish(wish);
          }}
        >
          {words("amending/bring", { contingency: titleIn(outline, contingency) })}
        </button>
      ))}
    </div>
  );
}
