import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useParams } from "react-router-dom";
import type { WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { Briefed } from "../brief/index.ts";
import { BriefView, useBriefedPlan, useBriefedWalk } from "../brief/index.ts";
import { HelpButton } from "../help/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { printAddress, useStartChoice } from "../session/index.ts";
import { useProcedureText } from "../shelf/index.ts";

/** The page that briefs a plan (`/brief/plan/…`) or a walk as flown (`/brief/walk/…`). */
export function BriefPage() {
  const { of = "", id = "" } = useParams();
  return of === "walk" ? <WalkBriefing key={id} id={id} /> : <PlanBriefing key={id} id={id} />;
}

function PlanBriefing({ id }: { readonly id: string }) {
  const { start: ownStart } = useProcedureLight(useProcedureText(id).id);
  const start = useStartChoice(id) ?? ownStart;
  const briefed = useBriefedPlan(id, start);
  return (
    <Page
      briefed={briefed}
      name={`plan:${id}`}
      audience={printAddress(id, start, "audience")}
      storyboard={printAddress(id, start, "storyboard")}
      back={{ address: `/plan/${id}`, label: words("parts/timeline") }}
    />
  );
}

function WalkBriefing({ id }: { readonly id: string }) {
  const briefed = useBriefedWalk(id as WalkId);
  return (
    <Page
      briefed={briefed}
      name={`walk:${id}`}
      audience={`/audience-walk/${id}`}
      storyboard={`/storyboard-walk/${id}`}
      back={{ address: `/review/${id}`, label: words("parts/review") }}
    />
  );
}

interface PageProps {
  readonly briefed: Briefed;
  readonly name: string;
  readonly audience: string;
  readonly storyboard: string;
  readonly back: { readonly address: string; readonly label: string };
}

function Page({ briefed: { title, briefing, kind, told }, name, audience, storyboard, back }: PageProps) {
  const router = useIonRouter();
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title={title ?? words("brief/brief")} what={words("brief/brief")}>
            <button type="button" className="plain-button" onClick={() => router.push(back.address)}>
              {back.label}
            </button>
            <a className="plain-button" href={storyboard}>
              {words("brief/print-storyboard")}
            </a>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <HelpButton screen="brief" />
          </ScreenHead>
          {briefing ? (
            <BriefView briefing={briefing} kind={kind} name={name} audience={audience} />
          ) : (
            <p className="page-message" role="status">
              {told}
            </p>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
