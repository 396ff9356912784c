import { useEffect, useState } from "react";
import { isPracticeWalk } from "../../core/practice/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { putGuideAway, useGuideAway } from "./guide-away.ts";
import { TriedList } from "./tried-list.tsx";
import "./practice.css";

/** What the guide says above the review of a practice walk that is closed, for the last time ([PRA4]); nothing above any other. */
export function PracticeReview({ ledger }: { readonly ledger: Ledger }) {
  const { walk } = ledger.opened;
  const isAway = useGuideAway(walk);
  const isOver = isPracticeWalk(ledger) && ledger.phase === "closed";
  // It stays for as long as the review that it was read above is open.
  const [isShown, setShown] = useState(!isAway);
  useEffect(() => {
    if (isOver) putGuideAway(walk, true);
  }, [walk, isOver]);
  if (!isOver || !isShown) return null;
  return (
    <section className="practice-guide" aria-label={words("practice/guide")}>
      <div className="practice-says">
        <p className="practice-next">{words("practice/review")}</p>
        <TriedList ledger={ledger} />
      </div>
      <button type="button" className="plain-button" onClick={() => setShown(false)}>
        {words("practice/finish")}
      </button>
    </section>
  );
}
