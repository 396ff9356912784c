import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import type { ReactNode } from "react";
import { useParams, useSearchParams } from "react-router-dom";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { Briefed } from "../brief/index.ts";
import { BriefView, readBeside, useBesideChoices, useBriefedPlan, useBriefedWalk } from "../brief/index.ts";
import { HelpButton } from "../help/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { ScreenHead, SelectField } from "../parts/index.ts";
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
      own={`plan:${id}`}
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
      own={`walk:${id}`}
    />
  );
}

interface PageProps {
  readonly briefed: Briefed;
  readonly name: string;
  readonly audience: string;
  readonly storyboard: string;
  readonly back: { readonly address: string; readonly label: string };
  /** What it is itself, as the choice of what to show beside it names it. */
  readonly own: string;
}

/** The briefing that is chosen to be shown beside another one, handed to what draws it. */
interface BesideProps {
  readonly id: string;
  /** When the walk begins, by the briefing that it is beside. */
  readonly start: Instant | null;
  readonly children: (beside: Briefed) => ReactNode;
}

const BesidePlan = ({ id, start, children }: BesideProps) => children(useBriefedPlan(id, start));
const BesideWalk = ({ id, children }: BesideProps) => children(useBriefedWalk(id as WalkId));

function Page({
  briefed: { title, briefing, kind, told },
  name,
  audience,
  storyboard,
  back,
  own,
}: PageProps) {
  const router = useIonRouter();
  const [query, setQuery] = useSearchParams();
  const choices = useBesideChoices(briefing?.course.outline.procedure.id ?? null, own);
  const chosen = query.get("beside") ?? "";
  const asked = readBeside(chosen);
  const Beside = asked?.of === "walk" ? BesideWalk : BesidePlan;
  // An address may name one of another procedure, which is not offered otherwise.
  const offered = (beside: Briefed | null) =>
    asked && !choices.some(({ value }) => value === chosen)
      ? [...choices, { value: chosen, name: beside?.title ?? asked.id }]
      : choices;
  const view = (beside: Briefed | null) =>
    briefing && (
      <>
        {offered(beside).length > 0 && (
          <div className="brief-choice">
            <SelectField
              label={words("brief/beside")}
              choices={[{ value: "", name: words("brief/beside-nothing") }, ...offered(beside)].map(
                (one) => ({
                  id: one.value,
                  name: one.name,
                }),
              )}
              value={asked ? chosen : ""}
              onValue={(next) => setQuery(next === "" ? {} : { beside: next }, { replace: true })}
            />
            {beside?.told != null && <p role="status">{beside.told}</p>}
          </div>
        )}
        <BriefView
          key={chosen}
          briefing={briefing}
          kind={kind}
          name={name}
          audience={audience}
          beside={beside?.briefing ? { briefing: beside.briefing, kind: beside.kind } : null}
        />
      </>
    );
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
            asked ? (
              <Beside key={chosen} id={asked.id} start={briefing.start}>
                {view}
              </Beside>
            ) : (
              view(null)
            )
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
