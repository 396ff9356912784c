import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import type { ReactNode } from "react";
import { words } from "../../words/index.ts";
import type { HelpScreen } from "../help/index.ts";
import { HelpButton } from "../help/index.ts";
import { ScreenHead } from "../parts/index.ts";
import type { Texts } from "../texts/index.ts";
import { TextsContext, TextsTurn } from "../texts/index.ts";

/** Another page that a head leads to. */
interface PageLink {
  readonly path: string;
  readonly name: string;
}

interface ScreenPageProps {
  /** The screen whose help the head opens. */
  readonly screen: HelpScreen;
  readonly title: string;
  /** What the screen shows about it. */
  readonly what: string;
  /** False where the screen has a heading of its own below. */
  readonly isHeading?: boolean;
  /** The pages that the head leads to, the shelf last. */
  readonly to: readonly PageLink[];
  /** The texts that the screen shows; the head offers the author's own. */
  readonly texts?: Texts | null;
  readonly children: ReactNode;
}

/** A page with the head of its screen: what it shows, buttons to other pages, and its help. */
export function ScreenPage({ screen, title, what, isHeading = true, to, texts, children }: ScreenPageProps) {
  const router = useIonRouter();
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title={title} what={what} isHeading={isHeading}>
            {[...to, { path: "/", name: words("parts/shelf") }].map(({ path, name }) => (
              <button key={path} type="button" className="plain-button" onClick={() => router.push(path)}>
                {name}
              </button>
            ))}
            {texts && (
              <TextsContext value={texts}>
                <TextsTurn />
              </TextsContext>
            )}
            <HelpButton screen={screen} />
          </ScreenHead>
          {children}
        </main>
      </IonContent>
    </IonPage>
  );
}
