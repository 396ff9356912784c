import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useMemo, useState } from "react";
import { useParams } from "react-router-dom";
import { checkProcedureText } from "../../core/check/index.ts";
import { lightFrom, planOf } from "../../core/plan/index.ts";
import { remarkFindings } from "../../core/remarks/index.ts";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { BesidePage } from "../panel/index.ts";
import { FindingsOfUnreadable, ReadView } from "../read/index.ts";
import { RemarksPanel, useRemarks } from "../remarks/index.ts";
import { printAddress, useStartChoice } from "../session/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { TextsContext, useTexts } from "../texts/index.ts";

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
  const texts = useTexts(checked?.outline ?? null);
  const here = useRemarks(id, text);
  const [isRemarking, setIsRemarking] = useState(false);
  const findings = useMemo(
    () =>
      checked?.file && here
        ? [...checked.findings, ...remarkFindings(here.folded, checked.file)]
        : (checked?.findings ?? []),
    [checked, here],
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
            <TextsContext value={texts}>
              <ReadView outline={texts?.outline ?? checked.outline} plan={plan} findings={findings}>
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
                <button
                  type="button"
                  className="plain-button"
                  onClick={() => router.push(`/write/${procedure}`)}
                >
                  {words("shelf/edit")}
                </button>
                <a className="plain-button" href={printAddress(procedure, start)}>
                  {words("read/printable")}
                </a>
                <a className="plain-button" href={printAddress(procedure, start, "cards")}>
                  {words("cards/wrist-cards")}
                </a>
                {here && (
                  <button
                    type="button"
                    className="plain-button"
                    aria-expanded={isRemarking}
                    onClick={() => setIsRemarking(!isRemarking)}
                  >
                    {words("remarks/button", {
                      count: here.folded.comments.filter(({ resolvedBy }) => resolvedBy.length === 0).length,
                    })}
                  </button>
                )}
                <HelpButton screen="read" />
              </ReadView>
            </TextsContext>
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
          {isRemarking && here && checked?.outline && (
            <BesidePage>
              <RemarksPanel outline={checked.outline} here={here} onClose={() => setIsRemarking(false)} />
            </BesidePage>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
