import { IonPage, useIonRouter } from "@ionic/react";
import { useEffect } from "react";
import { useParams } from "react-router-dom";
import { writeLines } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { walkFileName } from "../../io/backup/index.ts";
import { saveText } from "../../io/browser-files/index.ts";
import { keepAwake } from "../../io/device/index.ts";
import { FollowView, type KeptWords } from "../follow/index.ts";
import { useServices, useStoreStatus, useWalkSession } from "../session/index.ts";

/** Follows one walk. */
export function FollowPage() {
  const { walk = "" } = useParams();
  const { now } = useServices();
  const opened = useWalkSession(walk as WalkId);
  const status = useStoreStatus();
  const router = useIonRouter();
  const { session, folded, isRead, problem } = opened;
  const isOn = folded.ledger !== null && folded.ledger.phase !== "closed";
  useEffect(() => {
    if (!isOn) return;
    const keeper = keepAwake();
    return () => keeper.release();
  }, [isOn]);
  const kept: KeptWords =
    status.kind === "durable"
      ? { title: "Alone", detail: "kept here", alarming: false }
      : { title: "In memory only", detail: "export before closing", alarming: true };
  return (
    <IonPage>
      {folded.ledger ? (
        <FollowView
          session={session}
          folded={folded}
          ledger={folded.ledger}
          wall={now}
          kept={kept}
          onGo={(to) => router.push(to === "shelf" ? "/" : `/${to}/${walk}`)}
          onExport={() =>
            void saveText(walkFileName(walk as WalkId), writeLines(folded.entries), "application/jsonl")
          }
        />
      ) : (
        <main className="page-message" role="status">
          <p>{!isRead ? "Opening the walk…" : (problem ?? "There is no such walk on this device.")}</p>
          <button type="button" className="plain-button" onClick={() => router.push("/")}>
            Shelf
          </button>
        </main>
      )}
    </IonPage>
  );
}
