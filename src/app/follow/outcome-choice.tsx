import type { Step } from "../../core/procedure/index.ts";
import type { DecisionId } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { isContrary, settledOf } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";

type Decision = NonNullable<Step["decide"]>;

interface OutcomeChoiceProps {
  readonly decision: Decision;
  readonly ledger: Ledger;
  readonly onChoose: (decision: DecisionId, outcome: string) => void;
  /** Says as the lead which outcome holds; `null` for who does not lead. */
  readonly onSettle: ((decision: DecisionId, outcome: string) => void) | null;
}

/**
 * The outcomes of a decision to choose from, without the one that was entered. Where two devices decided differently the lead says which
 * of all holds, and from then on nobody else changes it ([WLK5]).
 */
export function OutcomeChoice({ decision, ledger, onChoose, onSettle }: OutcomeChoiceProps) {
  const taken = ledger.outcomes.get(decision.id) ?? null;
  const settled = settledOf(ledger, decision.id);
  if (settled && !onSettle) return <p>{words("panel/settled", { outcome: settled.outcome })}</p>;
  const isToSettle = onSettle !== null && (settled !== null || isContrary(ledger, decision.id));
  const legend = () => {
    if (settled) return words("panel/settled-change", { outcome: settled.outcome });
    if (isToSettle && taken !== null) return words("panel/to-settle", { outcome: taken });
    return taken !== null ? words("panel/came-out", { outcome: taken }) : decision.ask;
  };
  const offered = decision.outcomes.filter((outcome) => outcome !== taken || (isToSettle && !settled));
  return (
    <fieldset className="panel-outcomes">
      <legend>{legend()}</legend>
      {offered.map((outcome) => (
        <button
          key={outcome}
          type="button"
          className="plain-button"
          onClick={() => (isToSettle ? onSettle : onChoose)(decision.id, outcome)}
        >
          {isToSettle
            ? words("panel/holds", { outcome: outcome.replaceAll("-", " ") })
            : outcome.replaceAll("-", " ")}
        </button>
      ))}
    </fieldset>
  );
}
