import type { Step } from "../../core/procedure/index.ts";
import type { DecisionId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

type Decision = NonNullable<Step["decide"]>;

interface OutcomeChoiceProps {
  readonly decision: Decision;
  /** The outcome that was entered; `null` when the decision has not been taken. */
  readonly taken: string | null;
  readonly onChoose: (decision: DecisionId, outcome: string) => void;
}

/** The outcomes of a decision to choose from, without the one that was entered. */
export function OutcomeChoice({ decision, taken, onChoose }: OutcomeChoiceProps) {
  return (
    <fieldset className="panel-outcomes">
      <legend>{taken !== null ? words("panel/came-out", { outcome: taken }) : decision.ask}</legend>
      {decision.outcomes
        .filter((outcome) => outcome !== taken)
        .map((outcome) => (
          <button
            key={outcome}
            type="button"
            className="plain-button"
            onClick={() => onChoose(decision.id, outcome)}
          >
            {outcome.replaceAll("-", " ")}
          </button>
        ))}
    </fieldset>
  );
}
