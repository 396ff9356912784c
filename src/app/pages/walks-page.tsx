import { useIonRouter } from "@ionic/react";
import { useMemo } from "react";
import { useParams } from "react-router-dom";
import { checkProcedureText } from "../../core/check/index.ts";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { useWalksTold } from "../learn/index.ts";
import { useProcedureText } from "../shelf/index.ts";
import { markedInText, TextsContext, useTexts } from "../texts/index.ts";
import { WalksView } from "../walks/index.ts";
import { reviewPath } from "./review-path.ts";
import { ScreenPage } from "./screen-page.tsx";
import { WalksTrouble } from "./walks-trouble.tsx";

/** The page with many walks of one procedure side by side. */
export function WalksPage() {
  const { procedure = "" } = useParams();
  const { text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const read = useMemo(() => (text === null ? null : checkProcedureText(text)), [text]);
  const texts = useTexts(read?.outline ?? null, markedInText);
  const told = useWalksTold(read?.file ?? null);
  const open = (walk: WalkId, step: StepId | null) => router.push(reviewPath(walk, step));
  return (
    <ScreenPage
      screen="walks"
      title={texts?.outline.procedure.title ?? words("walks/title")}
      what={words("walks/what")}
      to={[
        { path: `/learn/${procedure}`, name: words("learn/title") },
        { path: `/plan/${procedure}`, name: words("parts/timeline") },
      ]}
      texts={texts}
    >
      {texts && typeof told === "object" ? (
        <TextsContext value={texts}>
          <WalksView outline={texts.outline} told={told} onOpen={open} />
        </TextsContext>
      ) : (
        <WalksTrouble read={read} isRead={isRead} told={told} />
      )}
    </ScreenPage>
  );
}
