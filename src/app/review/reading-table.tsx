import type { ReadingReview, Review } from "../../core/review/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf, quantityWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { petOf } from "./review-words.ts";

/** The readings of each supply over time, those that cannot be true included. */
export function ReadingTable({ review }: { readonly review: Review }) {
  const bySupply = review.readings.toSorted((a, b) => order(a).localeCompare(order(b)) || a.at - b.at);
  return (
    <ReviewTable
      id="review-readings"
      title={words("review/readings")}
      columns={columns(
        "review/column-who",
        "review/column-supply",
        "review/column-pet",
        "review/column-read",
        "review/column-counts",
      )}
      rows={bySupply.map((reading, index) => ({
        key: `${index} ${order(reading)}`,
        cells: readingCells(review, reading),
      }))}
      empty={words("review/no-readings")}
    />
  );
}

const order = ({ crew, supply }: ReadingReview): string => `${crew} ${supply}`;

function readingCells(review: Review, { crew, supply: id, at, value, impossible }: ReadingReview) {
  const { outline } = review;
  const supply = outline.procedure.supplies.find((one) => one.crew === crew && one.id === id);
  return [
    callsOf(outline, [crew]),
    supply?.label ?? id,
    petOf(review, at),
    <b key="value">{quantityWords({ value, unit: supply?.unit ?? "1" })}</b>,
    impossible === null
      ? words("review/counts")
      : words("review/does-not-count", { why: inWords(impossible) }),
  ];
}
