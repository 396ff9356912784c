import { memo } from "react";
import type { Review } from "../../core/review/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import { misplacedItems } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { locationWords, stepWords } from "../parts/index.ts";
import { AlertTable } from "./alert-table.tsx";
import { AmendmentTable } from "./amendment-table.tsx";
import { ConfirmTable } from "./confirm-table.tsx";
import { CorrectionTable } from "./correction-table.tsx";
import { DecisionTable } from "./decision-table.tsx";
import { DelayTable } from "./delay-table.tsx";
import { NoteTable } from "./note-table.tsx";
import { ReadingTable } from "./reading-table.tsx";
import { RecordTable } from "./record-table.tsx";
import { ReopeningTable } from "./reopening-table.tsx";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { petOf } from "./review-words.ts";
import { StepTable } from "./step-table.tsx";
import { WatchTable } from "./watch-table.tsx";

interface ReviewTablesProps {
  readonly review: Review;
  /** The step that the reader came for; `null` for none. */
  readonly sought: StepId | null;
}

/** Everything that a picture cannot show: departures from the plan, and every step. Drawn once, since a long walk has thousands of rows. */
export const ReviewTables = memo(function ReviewTables({ review, sought }: ReviewTablesProps) {
  return (
    <>
      <DeviationTable review={review} />
      <AmendmentTable review={review} />
      <DelayTable review={review} />
      <ItemTable review={review} />
      <CorrectionTable review={review} />
      <RecordTable review={review} />
      <ConfirmTable review={review} />
      <WatchTable review={review} />
      <ReadingTable review={review} />
      <DecisionTable review={review} />
      <ReopeningTable review={review} />
      <AlertTable review={review} />
      <NoteTable review={review} />
      <HoldTable review={review} />
      <StepTable review={review} sought={sought} />
      <IgnoredTable review={review} />
    </>
  );
});

/** The departures from the plan, in order of time. */
function DeviationTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-deviations"
      title={words("review/deviations")}
      columns={columns(
        "review/column-pet",
        "review/column-what",
        "review/column-step",
        "review/column-in-words",
      )}
      rows={review.deviations
        .toSorted((a, b) => a.at - b.at)
        .map(({ at, kind, step, text }, index) => ({
          key: `${index} ${kind}`,
          cells: [
            petOf(review, at),
            <b key="kind">{words(`review/kind-${kind}`)}</b>,
            stepWords(review.outline, step),
            inWords(text),
          ],
        }))}
      empty={noDeviations(review)}
    />
  );
}

/** Skipped steps of get-aheads are no deviation, and are told all the same. */
function noDeviations({ steps }: Review): string {
  const count = steps.filter(({ ending }) => ending === "skipped").length;
  return count === 0 ? words("review/no-deviations") : words("review/no-deviations-but-left-out", { count });
}

/** The items that are not where they must be at the end of the walk. */
function ItemTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-items"
      title={words("review/items")}
      columns={columns("review/column-item", "review/column-must-be", "review/column-was-last")}
      rows={misplacedItems(review.outline, review.items).map(({ item, is, mustBe }) => ({
        key: item.id,
        cells: [
          <b key="item">{item.label ?? item.id}</b>,
          mustBe ? locationWords(review.outline, mustBe) : words("review/at-a-refuge"),
          locationWords(review.outline, is),
        ],
      }))}
      empty={
        review.outline.procedure.items.length === 0
          ? words("review/no-items")
          : words("review/all-items", { count: review.outline.procedure.items.length })
      }
    />
  );
}

/** The holds, with their length and reason. */
function HoldTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-holds"
      title={words("review/holds")}
      columns={columns("review/column-from", "review/column-to", "review/column-for", "review/column-reason")}
      rows={review.holds.map(({ start, finish, reason, lifted }) => ({
        key: String(start),
        cells: [
          clockText(start),
          lifted ? clockText(finish) : words("review/not-lifted"),
          words("figures/length", { time: (finish - start) as typeof start }),
          reason || words("review/no-reason"),
        ],
      }))}
      empty={words("review/no-holds")}
    />
  );
}

/** The log entries that had no effect. */
function IgnoredTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-ignored"
      title={words("review/ignored")}
      columns={columns("review/column-entry", "review/column-from", "review/column-why")}
      rows={review.ignored.map(({ source, id, reason }) => ({
        key: `${source} ${id} ${reason.key}`,
        cells: [id, source, inWords(reason)],
      }))}
      empty={words("review/none-ignored")}
    />
  );
}
