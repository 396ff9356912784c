import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { lazy, Suspense, useDeferredValue, useMemo, useState } from "react";
import { useParams } from "react-router-dom";
import { applyChanges } from "../../core/changes/index.ts";
import { checkProcedureText } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import type { Change, ProcedureFile } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { FitSubject } from "../fit/index.ts";
import { FitPanel } from "../fit/index.ts";
import { HelpButton } from "../help/index.ts";
import { ContactTimes, LightAndStart, useProcedureLight } from "../light/index.ts";
import { BesidePage } from "../panel/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { PlanLeaves } from "../poster/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { chooseStart, printAddress, useServices, useStartChoice } from "../session/index.ts";
import { useProcedureText, useRevisions } from "../shelf/index.ts";
import type { SplitRequest } from "../split/index.ts";
import { SplitPanel } from "../split/index.ts";
import { markedInText, TextsContext, TextsTurn, useTexts } from "../texts/index.ts";
import { freeRevision, saveAsRevision, WhatIf } from "../what-if/index.ts";

const HOUR = 3_600_000;

const FragmentsPanel = lazy(async () => ({
  default: (await import("../fragments/index.ts")).FragmentsPanel,
}));

/** The page with the timeline of a procedure, as planned. */
export function PlanPage() {
  const { procedure = "" } = useParams();
  const { id, text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const { store, now } = useServices();
  const [asks, setAsks] = useState<"fit" | "split" | "fragments" | null>(null);
  const [saved, setSaved] = useState<string | null>(null);
  const read = useMemo(() => (text === null ? null : checkProcedureText(text)), [text]);
  const source = useProcedureLight(id);
  const { choice } = source;
  const [nextHour] = useState(() => (Math.ceil(now() / HOUR) * HOUR) as Instant);
  const start = useStartChoice(procedure) ?? source.start ?? nextHour;
  const settled = useDeferredValue(start);
  const options = useMemo(
    () => ({ start: settled, light: choice && lightFrom(choice, settled) }),
    [settled, choice],
  );
  const plan = useMemo(() => (read?.outline ? planOf(read.outline, options) : null), [read, options]);
  const texts = useTexts(read?.outline ?? null, markedInText);
  const outline = texts?.outline ?? null;
  const subject = useMemo<FitSubject | null>(
    () => (read?.file ? { kind: "plan", file: read.file, ...options } : null),
    [read, options],
  );
  const request = useMemo<SplitRequest | null>(() => subject && { subject }, [subject]);
  const taken = useRevisions(read?.procedure?.id ?? null);
  const revision = freeRevision(read?.procedure?.revision, taken);
  const save = async (changed: ProcedureFile) => {
    const kept = await saveAsRevision(store, changed);
    if (kept) {
      setSaved(words("plan/revision-kept", { revision: String(kept.revision) }));
      chooseStart(kept.key, start);
      router.push(`/plan/${kept.key}`);
    } else setSaved(words("plan/revision-not-kept"));
  };
  const saveChanges = (changes: readonly Change[]) => {
    const changed = read?.file ? applyChanges(read.file, changes) : null;
    setAsks(null);
    if (changed?.file) void save(changed.file);
  };
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead
            title={outline?.procedure.title ?? words("parts/timeline")}
            what={words("plan/timeline-as-planned")}
          >
            <button type="button" className="plain-button" onClick={() => router.push(`/read/${procedure}`)}>
              {words("parts/read")}
            </button>
            <a className="plain-button" href={printAddress(procedure, start)}>
              {words("read/printable")}
            </a>
            <button
              type="button"
              className="plain-button"
              onClick={() => {
                // What is briefed is what is seen here, the start included.
                chooseStart(procedure, start);
                router.push(`/brief/plan/${procedure}`);
              }}
            >
              {words("brief/brief")}
            </button>
            {read?.file && (
              <>
                <button type="button" className="plain-button" onClick={() => setAsks("fit")}>
                  {words("fit/title")}
                </button>
                <button type="button" className="plain-button" onClick={() => setAsks("split")}>
                  {words("split/title")}
                </button>
                <button type="button" className="plain-button" onClick={() => setAsks("fragments")}>
                  {words("fragments/title")}
                </button>
              </>
            )}
            <button type="button" className="plain-button" onClick={() => router.push(`/learn/${procedure}`)}>
              {words("learn/title")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <TextsContext value={texts}>
              <TextsTurn />
            </TextsContext>
            <HelpButton screen="timeline" />
          </ScreenHead>
          <p role="status" className="plan-saved">
            {saved}
          </p>
          {read?.file && plan && texts && outline ? (
            <WhatIf
              key={procedure}
              file={read.file}
              plan={plan}
              show={texts.show}
              options={options}
              findings={read.findings}
              revision={revision}
              onSave={(changed) => void save(changed)}
            >
              <ContactTimes file={read.file} onFile={(changed) => void save(changed)} />
              <LightAndStart
                outline={outline}
                source={source}
                start={start}
                onStart={(next) => chooseStart(procedure, next)}
              />
              {plan.timeline && (
                <PlanLeaves
                  plan={plan}
                  timeline={plan.timeline}
                  poster={printAddress(procedure, start, "poster")}
                />
              )}
            </WhatIf>
          ) : (
            <div className="page-message" role="status">
              {read && <FindingsOfUnreadable findings={read.findings} />}
              {!read && <p>{isRead ? words("parts/no-such-procedure") : words("parts/opening-procedure")}</p>}
            </div>
          )}
          {asks === "fit" && subject && outline && (
            <BesidePage>
              <FitPanel
                outline={outline}
                subject={subject}
                essential={outline.procedure.tasks.filter(
                  ({ priority, closeout }) => priority === "essential" && !closeout,
                )}
                onAgain={null}
                onClose={() => setAsks(null)}
              />
            </BesidePage>
          )}
          {asks === "fragments" && read?.file && plan && (
            <BesidePage>
              <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
                <FragmentsPanel
                  file={read.file}
                  outline={plan.outline}
                  onChanges={saveChanges}
                  onClose={() => setAsks(null)}
                />
              </Suspense>
            </BesidePage>
          )}
          {asks === "split" && request && outline && (
            <BesidePage>
              <SplitPanel
                outline={outline}
                title={words("split/title")}
                request={request}
                takeUp={{ says: words("split/save", { revision }), onTake: saveChanges }}
                how={words("split/how")}
                onClose={() => setAsks(null)}
              />
            </BesidePage>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
