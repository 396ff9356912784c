import { useId } from "react";
import { lessonAt } from "../../core/practice/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { putGuideAway, useGuideAway } from "./guide-away.ts";
import { TriedList } from "./tried-list.tsx";
import "./practice.css";

/**
 * The guide above the steps of a practice walk: one thing that comes next, and what was tried so far ([PRA2]). Put away it
 * leaves a button that brings it back ([PRA4]).
 */
export function PracticeGuide({ state, walk }: { readonly state: WalkState; readonly walk: string }) {
  const isAway = useGuideAway(walk);
  const id = useId();
  const { next, aside } = lessonAt(state);
  return (
    <section className="practice-guide" aria-label={words("practice/guide")} data-away={isAway || undefined}>
      <div id={id} className="practice-says">
        {isAway ? (
          <p className="practice-clock">{words("practice/clock")}</p>
        ) : (
          <>
            <div role="status">
              {aside && <p className="practice-aside">{inWords(aside)}</p>}
              <p className="practice-next">{inWords(next)}</p>
            </div>
            <TriedList ledger={state.ledger} />
          </>
        )}
      </div>
      <button
        type="button"
        className="plain-button"
        aria-expanded={!isAway}
        aria-controls={id}
        onClick={() => putGuideAway(walk, !isAway)}
      >
        {words(isAway ? "practice/bring-back" : "practice/put-away")}
      </button>
    </section>
  );
}
