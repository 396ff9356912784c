import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useParams } from "react-router-dom";
import { LIBRARY } from "../../core/library/index.ts";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { JoinForm } from "../link/index.ts";
import { ScreenHead } from "../parts/index.ts";

/** The page for joining a walk with a code. A QR code opens it with the code filled in. */
export function JoinPage() {
  const { code = "" } = useParams();
  const router = useIonRouter();
  return (
    <IonPage>
      <IonContent>
        <main className="join-page">
          <ScreenHead title={words("link/join-title")} what={words("link/join-what")}>
            <button type="button" className="plain-button" onClick={() => router.push("/library")}>
              {words("library/title")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <HelpButton screen="join" />
          </ScreenHead>
          <JoinForm
            key={code}
            code={code}
            onJoined={(walk) => router.push(walk === LIBRARY ? "/library" : `/follow/${walk}`)}
          />
        </main>
      </IonContent>
    </IonPage>
  );
}
