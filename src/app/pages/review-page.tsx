import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useParams } from "react-router-dom";
import type { WalkId } from "../../core/units/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { WalkReview } from "../review/index.ts";

/** Looks a walk back over. */
export function ReviewPage() {
  const { walk = "" } = useParams();
  const router = useIonRouter();
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title="Review" what="As flown against the plan" isHeading={false}>
            <button type="button" className="plain-button" onClick={() => router.push(`/follow/${walk}`)}>
              Follow
            </button>
            <button type="button" className="plain-button" onClick={() => router.push(`/timeline/${walk}`)}>
              Timeline
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              Shelf
            </button>
          </ScreenHead>
          <WalkReview
            walk={walk as WalkId}
            onPrint={() => window.location.assign(`/print-walk/${encodeURIComponent(walk)}`)}
          />
        </main>
      </IonContent>
    </IonPage>
  );
}
