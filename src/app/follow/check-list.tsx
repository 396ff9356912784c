import type { Step } from "../../core/procedure/index.ts";
import type { StepProgress } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { TextMark } from "../texts/index.ts";
import type { FollowActions } from "./follow-actions.ts";

interface CheckListProps {
  readonly step: Step;
  readonly progress: StepProgress;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
}

/** What a step counts off, one button each. Nothing is drawn for a step that counts off nothing. */
export function CheckList({ step, progress, actions }: CheckListProps) {
  if (step.check.length === 0) return null;
  const count = progress.counted.length;
  return (
    <fieldset className="check-list">
      <legend>{words("follow/count-off", { count, all: step.check.length })}</legend>
      {step.check.map((what, place) => {
        const isCounted = progress.counted.includes(place);
        return (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: what is counted off is known by its place in the list.
            key={place}
            type="button"
            className="plain-button check-item"
            aria-pressed={isCounted}
            disabled={actions === null || isCounted}
            onClick={() => void actions?.countOff(step.id, place)}
          >
            {words(isCounted ? "follow/counted" : "follow/to-count", { what })}
            <TextMark list="steps" id={step.id} field="check" part={place} />
          </button>
        );
      })}
    </fieldset>
  );
}
