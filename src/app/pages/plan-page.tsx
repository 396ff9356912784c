import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useMemo } from "react";
import { useParams } from "react-router-dom";
import { planProcedure } from "../../core/plan/index.ts";
import { readProcedure } from "../../core/procedure/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { TimelineView } from "../timeline/index.ts";

/** A procedure along time, as planned. */
export function PlanPage() {
  const { procedure = "" } = useParams();
  const { text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const read = useMemo(() => (text === null ? null : readProcedure(text)), [text]);
  const plan = useMemo(() => (read?.procedure ? planProcedure(read.procedure) : null), [read]);
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title={read?.procedure?.title ?? "Timeline"} what="Timeline as planned">
            <button type="button" className="plain-button" onClick={() => router.push(`/read/${procedure}`)}>
              Read
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              Shelf
            </button>
          </ScreenHead>
          {plan ? (
            <TimelineView outline={plan.outline} plan={plan} state={null} />
          ) : (
            <div className="page-message" role="status">
              {read && <FindingsOfUnreadable findings={read.findings} />}
              {!read && (
                <p>{isRead ? "There is no such procedure on this device." : "Opening the procedure…"}</p>
              )}
            </div>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
