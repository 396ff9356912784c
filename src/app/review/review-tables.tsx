import type { Review } from "../../core/review/index.ts";
import { clockText } from "../../core/units/index.ts";
import { misplacedItems } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { locationWords, stepWords } from "../parts/index.ts";
import { NoteTable } from "./note-table.tsx";
import { RecordTable } from "./record-table.tsx";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { petOf } from "./review-words.ts";
import { StepTable } from "./step-table.tsx";

/** Everything that a picture cannot show: departures from the plan, and every step. */
export function ReviewTables({ review }: { readonly review: Review }) {
  return (
    <>
      <DeviationTable review={review} />
      <ItemTable review={review} />
      <RecordTable review={review} />
      <DecisionTable review={review} />
      <NoteTable review={review} />
      <HoldTable review={review} />
      <StepTable review={review} />
      <IgnoredTable review={review} />
    </>
  );
}

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

/** The decisions that were taken, and whether they came out as expected. */
function DecisionTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-decisions"
      title={words("review/decisions")}
      columns={columns("review/column-asked", "review/column-came-out", "review/column-expected")}
      rows={review.decisions.map(({ decision, outcome, expected }) => ({
        key: decision,
        cells: [
          review.outline.decision(decision)?.decision.ask ?? decision,
          <b key="outcome">{outcome}</b>,
          words(expected ? "review/as-expected" : "review/not-as-expected"),
        ],
      }))}
      empty={words("review/no-decisions")}
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
