import { useMemo } from "react";
import { useParams } from "react-router-dom";
import type { WalkId } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
import type { Folded, Ledger } from "../../core/walk/index.ts";
import { walkStateAt } from "../../core/walk/index.ts";
import { secondsOf } from "../../io/clock/index.ts";
import { words } from "../../words/index.ts";
import { useMissingWalk } from "../link/index.ts";
import { useWalkRisk } from "../risk/index.ts";
import { ownClockOffset, useSeconds, useServices, useWalkSession } from "../session/index.ts";
import { markedInText, useFoldedTexts } from "../texts/index.ts";
import { TimelineView } from "../timeline/index.ts";
import { ScreenPage } from "./screen-page.tsx";

/** The page with the timeline of a walk: the plan, what was done, and what is forecast. */
export function TimelinePage() {
  const { walk = "" } = useParams();
  const { folded: entered, isRead, problem } = useWalkSession(walk as WalkId);
  const { folded, texts } = useFoldedTexts(entered, markedInText);
  const { ledger } = folded;
  const { said } = useMissingWalk({ walk: walk as WalkId, isRead, problem, isThere: ledger !== null });
  return (
    <ScreenPage
      screen="timeline"
      title={ledger?.inForce.outline.procedure.title ?? words("parts/timeline")}
      what={words("timeline/of-the-walk")}
      to={[
        { path: `/follow/${walk}`, name: words("parts/follow") },
        { path: `/review/${walk}`, name: words("parts/review") },
      ]}
      texts={texts}
    >
      {ledger ? (
        <LiveTimeline ledger={ledger} folded={folded} />
      ) : (
        <p className="page-message" role="status">
          {said}
        </p>
      )}
    </ScreenPage>
  );
}

function LiveTimeline({ ledger, folded }: { readonly ledger: Ledger; readonly folded: Folded }) {
  const { now, store } = useServices();
  const { outline } = ledger.inForce;
  const { mode } = ledger.opened;
  const clockOffset = ownClockOffset(folded, store.device);
  const seconds = useMemo(() => secondsOf({ clock: () => later(now(), clockOffset) }), [now, clockOffset]);
  const second = useSeconds(seconds);
  // A rehearsal has its own clock, which stays at its last entry unless the rehearsal is being followed.
  const at = mode === "rehearsal" ? (folded.lastAt ?? second) : second;
  const state = useMemo(() => walkStateAt(ledger, at), [ledger, at]);
  const risk = useWalkRisk(state);
  return <TimelineView outline={outline} plan={state.plan} state={state} risk={risk} />;
}
