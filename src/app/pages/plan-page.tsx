import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useDeferredValue, useMemo, useState } from "react";
import { useParams } from "react-router-dom";
import { checkProcedureText } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { ContactTimes, LightAndStart } from "../light/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { useLightChoice, useServices } from "../session/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { nextRevision, WhatIf } from "../what-if/index.ts";

const HOUR = 3_600_000;

/** The page with the timeline of a procedure, as planned. */
export function PlanPage() {
  const { procedure = "" } = useParams();
  const { text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const { store, now } = useServices();
  const [saved, setSaved] = useState<string | null>(null);
  const read = useMemo(() => (text === null ? null : checkProcedureText(text)), [text]);
  const choice = useLightChoice();
  const [start, setStart] = useState(() => (Math.ceil(now() / HOUR) * HOUR) as Instant);
  const settled = useDeferredValue(start);
  const options = useMemo(
    () => ({ start: settled, light: choice && lightFrom(choice, settled) }),
    [settled, choice],
  );
  const plan = useMemo(() => (read?.outline ? planOf(read.outline, options) : null), [read, options]);
  const save = async (changed: string) => {
    const added = await store.shelf.addProcedure(changed);
    if (added.kind === "added" || added.kind === "known") {
      setSaved(words("plan/revision-kept", { revision: String(added.procedure.revision) }));
      router.push(`/plan/${added.procedure.key}`);
    } else setSaved(words("plan/revision-not-kept"));
  };
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead
            title={read?.procedure?.title ?? words("parts/timeline")}
            what={words("plan/timeline-as-planned")}
          >
            <button type="button" className="plain-button" onClick={() => router.push(`/read/${procedure}`)}>
              {words("parts/read")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
          </ScreenHead>
          <p role="status" className="plan-saved">
            {saved}
          </p>
          {read?.file && plan ? (
            <WhatIf
              key={procedure}
              file={read.file}
              plan={plan}
              options={options}
              findings={read.findings}
              onSave={(changed) => void save(changed)}
            >
              <ContactTimes
                file={read.file}
                onFile={(file) =>
                  void save(
                    `${JSON.stringify({ ...file, revision: nextRevision(file.revision) }, null, 2)}\n`,
                  )
                }
              />
              <LightAndStart outline={plan.outline} choice={choice} start={start} onStart={setStart} />
            </WhatIf>
          ) : (
            <div className="page-message" role="status">
              {read && <FindingsOfUnreadable findings={read.findings} />}
              {!read && <p>{isRead ? words("parts/no-such-procedure") : words("parts/opening-procedure")}</p>}
            </div>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
