import { useMemo } from "react";
import { useParams } from "react-router-dom";
import { mayLead, maySurprise } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import { words } from "../../words/index.ts";
import { useLink, useMissingWalk } from "../link/index.ts";
import { useServices, useWalkSession } from "../session/index.ts";
import { TrainView, useSurprisesText } from "../train/index.ts";
import { ScreenPage } from "./screen-page.tsx";

/** The page on which a trainer lets surprises come in a rehearsal. */
export function TrainPage() {
  const { walk: name = "" } = useParams();
  const walk = name as WalkId;
  const { now } = useServices();
  const { session, folded, isRead, problem } = useWalkSession(walk);
  const { role } = useLink(walk);
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
            fire: role !== null && maySurprise(role),
            lay: !ledger.closed && (role === null || mayLead(role)),
          }}
          text={text}
          pick={pickFiles}
          onText={choose}
          onEnter={(drafts) => session.enter(drafts)}
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
