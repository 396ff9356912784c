import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useParams, useSearchParams } from "react-router-dom";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { WalkReview } from "../review/index.ts";

/** The page with the review of a walk. */
export function ReviewPage() {
  const { walk = "" } = useParams();
  const [search] = useSearchParams();
  const router = useIonRouter();
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead
            title={words("parts/review")}
            what={words("review/as-flown-against-plan")}
            isHeading={false}
          >
            <button type="button" className="plain-button" onClick={() => router.push(`/follow/${walk}`)}>
              {words("parts/follow")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push(`/timeline/${walk}`)}>
              {words("parts/timeline")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push(`/brief/walk/${walk}`)}>
              {words("brief/brief")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <HelpButton screen="review" />
          </ScreenHead>
          <WalkReview
            walk={walk as WalkId}
            sought={search.get("step") as StepId | null}
            onPrint={() => window.location.assign(`/print-walk/${encodeURIComponent(walk)}`)}
          />
        </main>
      </IonContent>
    </IonPage>
  );
}
