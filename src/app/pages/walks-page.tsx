import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useMemo } from "react";
import { useParams } from "react-router-dom";
import { checkProcedureText } from "../../core/check/index.ts";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { useWalksTold } from "../learn/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { WalksView } from "../walks/index.ts";
import { pageWords } from "./walks-page-words.ts";

/** The page with many walks of one procedure side by side. */
export function WalksPage() {
  const { procedure = "" } = useParams();
  const { text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const read = useMemo(() => (text === null ? null : checkProcedureText(text)), [text]);
  const told = useWalksTold(read?.file ?? null);
  const open = (walk: WalkId, step: StepId | null) =>
    router.push(
      `/review/${encodeURIComponent(walk)}${step === null ? "" : `?step=${encodeURIComponent(step)}`}`,
    );
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title={read?.procedure?.title ?? words("walks/title")} what={words("walks/what")}>
            <button type="button" className="plain-button" onClick={() => router.push(`/learn/${procedure}`)}>
              {words("learn/title")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push(`/plan/${procedure}`)}>
              {words("parts/timeline")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <HelpButton screen="walks" />
          </ScreenHead>
          {read?.outline && typeof told === "object" ? (
            <WalksView outline={read.outline} told={told} onOpen={open} />
          ) : (
            <div className="page-message" role="status">
              {read && !read.outline && <FindingsOfUnreadable findings={read.findings} />}
              <p>{pageWords(read !== null, read?.outline != null, isRead, told)}</p>
            </div>
          )}
        </main>
      </IonContent>
    </IonPage>
  );
}
