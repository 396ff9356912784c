import type { Review } from "../../core/review/index.ts";
import { words } from "../../words/index.ts";
import { stepWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { petOf } from "./review-words.ts";

/** The steps that were opened again, and the walk where it was, with the reasons. */
export function ReopeningTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-reopenings"
      title={words("review/reopenings")}
      columns={columns("review/column-pet", "review/column-what", "review/column-reason")}
      rows={review.reopenings.map(({ at, step, reason }, index) => ({
        key: `${index} ${step}`,
        cells: [
          petOf(review, at),
          step === null ? words("review/the-walk") : stepWords(review.outline, step),
          reason || words("review/no-reason"),
        ],
      }))}
      empty={words("review/no-reopenings")}
    />
  );
}
