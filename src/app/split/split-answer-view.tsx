import type { ReactNode } from "react";
import type { Change, Outline } from "../../core/procedure/index.ts";
import type { SplitAnswer } from "../../core/split/index.ts";
import {
  splitChainMessage,
  splitCostMessages,
  splitVerdict,
  suggestionMessages,
} from "../../core/split/index.ts";
import { inWords, words } from "../../words/index.ts";

/** What becomes of an answer that somebody takes up. */
export interface TakeUp {
  /** What the button says. */
  readonly says: string;
  readonly onTake: (changes: readonly Change[]) => void;
}

interface SplitAnswerViewProps {
  readonly outline: Outline;
  readonly answer: SplitAnswer;
  /** True when it is looked no further. */
  readonly isLast: boolean;
  readonly takeUp: TakeUp | null;
  readonly onStop: () => void;
  readonly onKeep: () => void;
  /** Stands behind how good the answer is. */
  readonly children?: ReactNode;
}

/** The answer: the plan as it is, how good a better one is, what it changes and what that costs. Keeping the plan comes first. */
export function SplitAnswerView(props: SplitAnswerViewProps) {
  const { outline, answer, isLast, takeUp, onStop, onKeep, children } = props;
  const { before, suggestions, changes, cost } = answer;
  const chain = splitChainMessage(outline, answer);
  return (
    <div className="split-answer">
      {before !== null && <p className="hint">{words("split/now", { finish: before })}</p>}
      <p role="status" className="split-verdict" data-status={answer.status}>
        {inWords(splitVerdict(answer))}
      </p>
      {!isLast && (
        <div className="split-going-on">
          <p className="hint">{words("split/going-on")}</p>
          <button type="button" className="plain-button" onClick={onStop}>
            {words("split/stop")}
          </button>
        </div>
      )}
      {children}
      {suggestions.length > 0 && (
        <>
          <button type="button" className="main-button" onClick={onKeep}>
            {words("split/keep")}
          </button>
          {chain && <p>{inWords(chain)}</p>}
          <ol className="split-suggestions">
            {suggestions.map((suggestion) => {
              const { what, why } = suggestionMessages(outline, suggestion);
              return (
                <li key={suggestion.kind === "order" ? suggestion.task : suggestion.steps.join(" ")}>
                  <p>{inWords(what)}</p>
                  <p className="hint">{inWords(why)}</p>
                </li>
              );
            })}
          </ol>
          {cost && (
            <>
              <h3>{words("split/cost")}</h3>
              <ul>
                {splitCostMessages(outline, cost).map((one) => {
                  const said = inWords(one);
                  return <li key={said}>{said}</li>;
                })}
              </ul>
            </>
          )}
          {takeUp && (
            <button type="button" className="plain-button" onClick={() => takeUp.onTake(changes)}>
              {takeUp.says}
            </button>
          )}
        </>
      )}
    </div>
  );
}
