import type { ReactNode } from "react";
import { memo } from "react";
import { lightMessage } from "../../core/light/index.ts";
import { lightFrom } from "../../core/plan/index.ts";
import type { Review } from "../../core/review/index.ts";
import type { Verdict } from "../../core/seal/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import { contactMessage } from "../../core/window/index.ts";
import { inWords, words } from "../../words/index.ts";
import "../parts/index.ts";
import { CommentField } from "./comment-field.tsx";
import { DriftChart } from "./drift-chart.tsx";
import { Ending } from "./ending.tsx";
import { LaneShares } from "./lane-shares.tsx";
import { ReviewTables } from "./review-tables.tsx";
import { SurprisePart } from "./surprise-part.tsx";
import { TaskPairs } from "./task-pairs.tsx";
import "./review.css";

/** What can be exported: the log, or the review in one of its forms. */
export type ExportKind = "log" | "csv" | "json" | "xes" | "print";

export interface ReviewViewProps {
  readonly review: Review;
  /** Whether the log is as it was entered; absent for nothing. */
  readonly record?: ReactNode;
  /** The same in a word; `null` while nothing is known, absent for nothing. */
  readonly verdict?: Verdict | null;
  /** The table of the devices' clocks. */
  readonly clocks: ReactNode;
  /** The map of what was flown, over what was planned; absent for none. */
  readonly map?: ReactNode;
  readonly onExport: (kind: ExportKind) => void;
  /** Keeps a comment in the log; `null` for a reader who may not enter anything. */
  readonly onComment?: ((text: string) => Promise<void>) | null;
  /** The step that the reader came for; absent for none. */
  readonly sought?: StepId | null;
}

const EXPORTS: readonly ExportKind[] = ["log", "csv", "json", "xes", "print"];

/** The review of a walk: pictures first, then the tables behind them. */
export function ReviewView({
  review,
  clocks,
  record = null,
  verdict,
  map = null,
  onExport,
  onComment = null,
  sought = null,
}: ReviewViewProps) {
  const { opened, outline, petZero } = review;
  const { title, revision } = outline.procedure;
  const end = endOf(review);
  const hasBegun = petZero !== null && review.steps.some(({ actual }) => actual !== null);
  const light = review.light && petZero !== null ? lightFrom(review.light, petZero) : null;
  const contact = light && contactMessage(outline.procedure, light);
  const names = outline.crew.flatMap(({ id, call }) => {
    const name = opened.names.get(id);
    return name ? [`${call} ${name}`] : [];
  });
  return (
    <article className="review">
      <header className="review-head">
        <h1>{title}</h1>
        <p className="hint">
          {[
            words(opened.mode === "rehearsal" ? "review/rehearsal-as-flown" : "review/as-flown"),
            ...(revision ? [words("review/revision", { revision })] : []),
            petZero === null ? words("review/clock-not-started") : words("review/pet-zero", { at: petZero }),
            ...names,
          ].join(" · ")}
        </p>
        {light && <p className="hint">{inWords(lightMessage(light))}</p>}
        {contact && <p className="hint">{inWords(contact)}</p>}
        {verdict !== undefined && (
          <button type="button" className="plain-button review-record" onClick={showRecord}>
            {verdict === null
              ? words("seal/in-short-unknown")
              : words("seal/in-short", { verdict: words(`seal/verdict-${verdict}`) })}
          </button>
        )}
        <fieldset className="review-exports">
          <legend className="heard-only">{words("review/export")}</legend>
          {EXPORTS.map((kind) => (
            <button key={kind} type="button" className="plain-button" onClick={() => onExport(kind)}>
              {words(`review/export-${kind}`)}
            </button>
          ))}
        </fieldset>
      </header>
      <Pictures review={review} end={end} hasBegun={hasBegun} />
      {hasBegun && map}
      <ReviewTables review={review} sought={sought} />
      {clocks}
      {record}
      {onComment && <CommentField onKeep={onComment} />}
    </article>
  );
}

interface PicturesProps {
  readonly review: Review;
  /** The right edge of every picture. */
  readonly end: Duration;
  readonly hasBegun: boolean;
}

/** What was flown as pictures; drawn once, whatever is found out of the log meanwhile. */
const Pictures = memo(function Pictures({ review, end, hasBegun }: PicturesProps) {
  return (
    <>
      <Ending review={review} end={end} />
      <SurprisePart review={review} />
      {hasBegun && (
        <>
          <TaskPairs review={review} end={end} />
          <LaneShares review={review} />
          <DriftChart review={review} end={end} />
        </>
      )}
    </>
  );
});

/** Brings what is said of the log into view, and the keyboard to it. */
function showRecord(): void {
  const heading = document.getElementById("review-seal");
  heading?.scrollIntoView({ block: "start" });
  heading?.focus({ preventScroll: true });
}

const QUARTER = 15 * 60_000;

/** The right edge of every picture, after the plan, the limit and the last step flown. */
function endOf({ plannedFinish, actualFinish, limit, end }: Review): Duration {
  const last = Math.max(plannedFinish ?? 0, actualFinish ?? 0, limit ?? 0, end?.at ?? 0, QUARTER);
  return (Math.ceil((last * 1.02) / QUARTER) * QUARTER) as Duration;
}
