import { useCallback, useMemo, useState } from "react";
import { mayMark } from "../../core/log/index.ts";
import type { RecordKnown, Review } from "../../core/review/index.ts";
import { reviewOf } from "../../core/review/index.ts";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
import { foldLog } from "../../core/walk/index.ts";
import { exportWalk, walkFileName, walkInPieces } from "../../io/backup/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { useLink, useMissingWalk } from "../link/index.ts";
import { PracticeReview } from "../practice/index.ts";
import { LazySealSection } from "../seal/index.ts";
import { ownClockOffset, storedFollower, useServices, useWalkSession } from "../session/index.ts";
import { markedInText, TextsContext, TextsTurn, useFoldedTexts } from "../texts/index.ts";
import { ClockTable } from "./clock-table.tsx";
import { FlownMap } from "./flown-map.tsx";
import { type ExportKind, ReviewView } from "./review-view.tsx";

interface WalkReviewProps {
  readonly walk: WalkId;
  /** The step that the reader came for; `null` for none. */
  readonly sought: StepId | null;
  readonly onPrint: () => void;
}

/** The review of a walk on this device, as far as its log goes, with its exports. */
export function WalkReview({ walk, sought, onPrint }: WalkReviewProps) {
  const { now, store } = useServices();
  const { session, folded: live, isRead, problem } = useWalkSession(walk);
  const { role } = useLink(walk);
  const { said } = useMissingWalk({ walk, isRead, problem, isThere: live.ledger !== null });
  const [asEntered, setAsEntered] = useState(false);
  const readLog = useCallback(() => walkInPieces(store.log, walk), [store, walk]);
  const [record, setRecord] = useState<RecordKnown>({ found: null, why: "not-asked" });
  const entered = useMemo(
    () => (asEntered ? foldLog(live.entries, { asEntered: true }) : live),
    [live, asEntered],
  );
  const { folded, texts } = useFoldedTexts(entered, markedInText);
  // A walk that is still going on is reviewed as of the moment when its log last grew.
  const at = useMemo(() => {
    const present =
      entered.ledger?.opened.mode === "live" ? later(now(), ownClockOffset(entered, store.device)) : null;
    return present ?? entered.lastAt ?? now();
  }, [entered, now, store.device]);
  const review = useMemo(() => reviewOf(folded, at), [folded, at]);
  if (!review) {
    return (
      <p className="page-message" role="status">
        {said}
      </p>
    );
  }
  const name = walkFileName(walk).replace(/\.walk\.jsonl$/, "");
  const give = async (kind: ExportKind): Promise<void> => {
    if (kind === "print") return onPrint();
    if (kind === "log") {
      await saveFile(`${name}.walk.jsonl`, await exportWalk(store.log, walk), "application/jsonl");
      return;
    }
    // The writers of the other forms are loaded only when they are needed. A file has the texts as they were written.
    const { reviewText } = await import("./review-text.ts");
    const written = reviewOf(entered, at) ?? review;
    await saveFile(`${name}.review.${kind}`, reviewText(written, record, kind), REVIEW_TYPES[kind]);
  };
  const comment = async (text: string): Promise<void> => {
    await session.enter([
      { name: "note.made", data: { text }, at: now(), actor: storedFollower() ?? "follower" },
    ]);
  };
  return (
    <>
      <TextsContext value={texts}>
        <div className="review-texts">
          <TextsTurn />
        </div>
      </TextsContext>
      {live.ledger && <PracticeReview ledger={live.ledger} />}
      <ReviewView
        review={review}
        sought={sought}
        map={
          folded.ledger && (
            <FlownMap
              ledger={folded.ledger}
              at={folded.lastAt ?? now()}
              sought={review.steps.find(({ step }) => step === sought)?.actual?.start ?? null}
            />
          )
        }
        verdict={record.found?.verdict ?? null}
        record={
          <LazySealSection
            entries={live.entries}
            readLog={readLog}
            tasks={tasksOf(review)}
            onKnown={setRecord}
            onSaveExtract={(text) => void saveFile(`${name}.extract.jsonl`, text, "application/jsonl")}
          />
        }
        clocks={
          <ClockTable
            readings={folded.clocks}
            petZero={review.petZero}
            asEntered={asEntered}
            onAsEntered={setAsEntered}
          />
        }
        onComment={role === null || mayMark(role) ? comment : null}
        onExport={(kind) => void give(kind)}
      />
    </>
  );
}

/** The tasks whose entries can be taken out of the log. */
const tasksOf = ({ outline }: Review) =>
  outline.procedure.tasks.map(({ id, title, steps }) => ({
    id,
    title,
    steps: steps.map((step) => step.id),
  }));

const REVIEW_TYPES = { csv: "text/csv", json: "application/json", xes: "application/xml" } as const;
