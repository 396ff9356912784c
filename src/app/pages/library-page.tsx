import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { LibraryView } from "../library/index.ts";
import { ScreenHead } from "../parts/index.ts";

/** The page with the procedures that a hub keeps. */
export function LibraryPage() {
  const router = useIonRouter();
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title={words("library/title")} what={words("library/what")}>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <HelpButton screen="library" />
          </ScreenHead>
          <LibraryView
            onCompare={({ before, after, base }) => {
              const keys = { before, after, ...(base === null ? {} : { base }) };
              router.push(`/compare?${new URLSearchParams(keys)}`);
            }}
          />
        </main>
      </IonContent>
    </IonPage>
  );
}
