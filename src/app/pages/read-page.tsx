import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useMemo } from "react";
import { useParams } from "react-router-dom";
import { checkProcedureText } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { FindingsOfUnreadable, ReadView } from "../read/index.ts";
import { printAddress, useStartChoice } from "../session/index.ts";
import { useProcedureText } from "../shelf/index.ts";

/** The page for reading one procedure as prepared. */
export function ReadPage() {
  const { procedure = "" } = useParams();
  const { id, text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const { choice, start: ownStart } = useProcedureLight(id);
  const start = useStartChoice(procedure) ?? ownStart;
  const options = useMemo(
    () => ({ start, light: choice && start !== null ? lightFrom(choice, start) : null }),
    [start, choice],
  );
  const checked = useMemo(() => (text === null ? null : checkProcedureText(text, options)), [text, options]);
  const plan = useMemo(
    () => (checked?.outline ? planOf(checked.outline, options) : null),
    [checked, options],
  );
  const back = (
    <button type="button" className="plain-button" onClick={() => router.push("/")}>
      {words("parts/shelf")}
    </button>
  );
  return (
    <IonPage>
      <IonContent>
        <main>
          {checked?.outline && plan ? (
            <ReadView outline={checked.outline} plan={plan} findings={checked.findings}>
              {back}
              <button
                type="button"
                className="plain-button"
                onClick={() => router.push(`/plan/${procedure}`)}
              >
                {words("parts/timeline")}
              </button>
              <button
                type="button"
                className="plain-button"
                onClick={() => router.push(`/brief/plan/${procedure}`)}
              >
                {words("brief/brief")}
              </button>
              <button
                type="button"
                className="plain-button"
                onClick={() => router.push(`/walks/${procedure}`)}
              >
                {words("walks/title")}
              </button>
              <button
                type="button"
                className="plain-button"
                onClick={() => router.push(`/compare?after=${procedure}`)}
              >
                {words("parts/compare")}
              </button>
              <a className="plain-button" href={printAddress(procedure, start)}>
                {words("read/printable")}
              </a>
              <a className="plain-button" href={printAddress(procedure, start, "cards")}>
                {words("cards/wrist-cards")}
              </a>
              <HelpButton screen="read" />
            </ReadView>
          ) : (
            <div className="page-message" role="status">
              {checked && <FindingsOfUnreadable findings={checked.findings} />}
              {!checked && (
                <p>{isRead ? words("parts/no-such-procedure") : words("parts/opening-procedure")}</p>
              )}
              <div className="panel-acts">
                {back}
                <HelpButton screen="read" />
              </div>
            </div>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
