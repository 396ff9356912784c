import { IonPage, useIonRouter } from "@ionic/react";
import { useCallback, useEffect } from "react";
import { useLocation, useParams } from "react-router-dom";
import { mayLead, mayMark } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
import { exportWalk, walkFileName, walkInPieces } from "../../io/backup/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { keepAwake } from "../../io/device/index.ts";
import { words } from "../../words/index.ts";
import { FollowView } from "../follow/index.ts";
import { BeyondStrip, LinkPanel, linkWords, useLink, useMissingWalk, useNotices } from "../link/index.ts";
import { LazyWalkCode } from "../seal/index.ts";
import {
  ownClockOffset,
  useClockJumps,
  useServices,
  useStoreStatus,
  useWalkSession,
} from "../session/index.ts";
import { TextsContext, useLedgerTexts } from "../texts/index.ts";
import { mayFire, playsHere } from "./plays-here.ts";

/** The page that follows one walk. */
export function FollowPage() {
  const { walk: name = "" } = useParams();
  const walk = name as WalkId;
  const { now, store } = useServices();
  const { session, folded, isRead, problem } = useWalkSession(walk);
  const status = useStoreStatus();
  const link = useLink(walk);
  const missing = useMissingWalk({ walk, isRead, problem, isThere: folded.ledger !== null });
  const { notices, putAway } = useNotices(walk, folded, link);
  const router = useIonRouter();
  const isOn = folded.ledger !== null && folded.ledger.phase !== "closed";
  // A page that was left may be kept behind the one that is seen.
  const isSeen = useLocation().pathname.startsWith("/follow/");
  useEffect(() => {
    if (!isOn || !isSeen) return;
    const keeper = keepAwake();
    return () => keeper.release();
  }, [isOn, isSeen]);
  const mayEnter = link.role === null || mayMark(link.role);
  useClockJumps(session, mayEnter && folded.ledger?.opened.mode === "live" ? folded.ledger.phase : null);
  const clockOffset = ownClockOffset(folded, link.device);
  const clock = useCallback(() => later(now(), clockOffset), [now, clockOffset]);
  const readLog = useCallback(() => walkInPieces(store.log, walk), [store, walk]);
  const petZero = folded.ledger?.petZero ?? null;
  const { ledger, texts } = useLedgerTexts(folded.ledger);
  return (
    <IonPage>
      {ledger ? (
        <TextsContext value={texts}>
          <FollowView
            session={session}
            folded={folded}
            ledger={ledger}
            clock={clock}
            clockOffset={clockOffset}
            device={link.device}
            kept={() => linkWords(link, status, now())}
            may={{
              mark: mayEnter,
              close: link.role === null || mayLead(link.role),
              surprise: mayFire(folded, link),
            }}
            playsHere={playsHere(folded, link)}
            notices={notices}
            onPutAway={putAway}
            beyond={(at) => <BeyondStrip link={link} petZero={petZero} now={at} />}
            linkPanel={(at, close) => (
              <LinkPanel
                walk={walk}
                link={link}
                petZero={petZero}
                now={at}
                code={<LazyWalkCode entries={folded.entries} readLog={readLog} />}
                onClose={close}
              />
            )}
            onGo={(to) => {
              // The handover is a document outside the pages, so that it prints in full.
              if (to === "handover") window.location.assign(`/handover/${encodeURIComponent(walk)}`);
              else router.push(to === "shelf" ? "/" : `/${to}/${walk}`);
            }}
            onExport={async () =>
              saveFile(walkFileName(walk), await exportWalk(store.log, walk), "application/jsonl")
            }
          />
        </TextsContext>
      ) : (
        <main className="page-message" role="status">
          <p>{missing.said}</p>
          {missing.mayJoin && (
            <button type="button" className="plain-button" onClick={() => router.push("/join")}>
              {words("link/join-title")}
            </button>
          )}
          <button type="button" className="plain-button" onClick={() => router.push("/")}>
            {words("parts/shelf")}
          </button>
        </main>
      )}
    </IonPage>
  );
}
