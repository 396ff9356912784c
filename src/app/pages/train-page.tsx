import { useMemo } from "react";
import { useParams } from "react-router-dom";
import { keyOf, mayLead, maySurprise } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import { words } from "../../words/index.ts";
import { useLink, useMissingWalk } from "../link/index.ts";
import { playedNow, useServices, useWalkSession } from "../session/index.ts";
import { TrainView, useSurprisesText } from "../train/index.ts";
import { mayFire } from "./plays-here.ts";
import { ScreenPage } from "./screen-page.tsx";

/** The page on which a trainer lets surprises come in a rehearsal. */
export function TrainPage() {
  const { walk: name = "" } = useParams();
  const walk = name as WalkId;
  const { now } = useServices();
  const { session, folded, isRead, problem } = useWalkSession(walk);
  const link = useLink(walk);
  const { role } = link;
  const { ledger } = folded;
  const { said } = useMissingWalk({ walk, isRead, problem, isThere: ledger !== null });
  const { procedure } = ledger?.inForce.outline ?? {};
  const { text, choose } = useSurprisesText(walk, procedure?.id ?? "");
  const anySeed = useMemo(() => now() % SEEDS, [now]);
  return (
    <ScreenPage
      screen="train"
      title={words("train/title")}
      what={procedure?.title ?? ""}
      to={[
        { path: `/follow/${walk}`, name: words("parts/follow") },
        { path: `/review/${walk}`, name: words("parts/review") },
      ]}
    >
      {ledger ? (
        <TrainView
          folded={folded}
          ledger={ledger}
          // A rehearsal goes by the clock of whoever plays it, of which the last entry tells.
          at={folded.lastAt ?? now()}
          may={{
            fire: mayFire(folded, link),
            lay: !ledger.closed && (role === null || mayLead(role)),
          }}
          clock={() => playedNow(walk, folded.lastAt ?? now())}
          isFollowedHere={role === null || !maySurprise(role)}
          text={text}
          pick={pickFiles}
          onText={choose}
          onEnter={async (drafts) => {
            const keys = new Set((await session.enter(drafts)).map(keyOf));
            const idle = session.folded().ignored.find((one) => keys.has(keyOf({ wire: one })));
            return idle?.reason ?? null;
          }}
          anySeed={anySeed}
        />
      ) : (
        <p className="page-message" role="status">
          {said}
        </p>
      )}
    </ScreenPage>
  );
}

const SEEDS = 1_000;
