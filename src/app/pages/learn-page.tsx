import { useIonRouter } from "@ionic/react";
import { useMemo, useState } from "react";
import { useParams } from "react-router-dom";
import { applyChanges } from "../../core/changes/index.ts";
import { checkProcedureText } from "../../core/check/index.ts";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { LearnView, type TakenOver, useRenamed, useWalksTold } from "../learn/index.ts";
import { useServices } from "../session/index.ts";
import { useProcedureText, useRevisions } from "../shelf/index.ts";
import { markedInText, TextsContext, useTexts } from "../texts/index.ts";
import { freeRevision, saveAsRevision } from "../what-if/index.ts";
import { reviewPath } from "./review-path.ts";
import { ScreenPage } from "./screen-page.tsx";
import { WalksTrouble } from "./walks-trouble.tsx";

/** The page on which an author takes over what walks tell of how long steps take. */
export function LearnPage() {
  const { procedure = "" } = useParams();
  const { text, isRead } = useProcedureText(procedure);
  const router = useIonRouter();
  const { store } = useServices();
  const [saved, setSaved] = useState<string | null>(null);
  const read = useMemo(() => (text === null ? null : checkProcedureText(text)), [text]);
  const texts = useTexts(read?.outline ?? null, markedInText);
  const [renamed, setRenamed] = useRenamed(read?.procedure?.id ?? "");
  const told = useWalksTold(read?.file ?? null, renamed);
  const taken = useRevisions(read?.procedure?.id ?? null);
  const save = async ({ changes, walks }: TakenOver) => {
    if (!read?.file) return;
    const steps = changes.flatMap((change) => ("change" in change ? [change.change] : []));
    const before = read.file.summary;
    const summary = before
      ? words("learn/summary-behind", { summary: before, steps, walks })
      : words("learn/summary", { steps, walks });
    const changed = applyChanges(read.file, [...changes, { head: { summary } }]);
    const kept = changed.file ? await saveAsRevision(store, changed.file) : null;
    if (!kept) return setSaved(words("plan/revision-not-kept"));
    setSaved(words("plan/revision-kept", { revision: String(kept.revision) }));
    router.push(`/plan/${kept.key}`);
  };
  const open = (walk: WalkId, step: StepId) => router.push(reviewPath(walk, step));
  return (
    <ScreenPage
      screen="learn"
      title={texts?.outline.procedure.title ?? words("learn/title")}
      what={words("learn/what")}
      to={[
        { path: `/walks/${procedure}`, name: words("walks/title") },
        { path: `/plan/${procedure}`, name: words("parts/timeline") },
      ]}
      texts={texts}
    >
      <p role="status" className="plan-saved">
        {saved}
      </p>
      {texts && typeof told === "object" ? (
        <TextsContext value={texts}>
          <LearnView
            outline={texts.outline}
            told={told}
            revision={freeRevision(read?.procedure?.revision, taken)}
            renamed={renamed}
            onRenamed={setRenamed}
            onSave={(over) => void save(over)}
            onOpen={open}
          />
        </TextsContext>
      ) : (
        <WalksTrouble read={read} isRead={isRead} told={told} />
      )}
    </ScreenPage>
  );
}
