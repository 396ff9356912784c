import type { Review } from "../../core/review/index.ts";
import { words } from "../../words/index.ts";
import { locationWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { actorWords, petOf } from "./review-words.ts";

/** The items that were found elsewhere than the steps had left them, with the reasons. */
export function CorrectionTable({ review }: { readonly review: Review }) {
  const { outline } = review;
  return (
    <ReviewTable
      id="review-corrections"
      title={words("review/corrections")}
      columns={columns(
        "review/column-pet",
        "review/column-item",
        "review/column-was-found",
        "review/column-who",
        "review/column-reason",
      )}
      rows={review.corrections.map(({ at, item, to, actor, reason }, index) => ({
        key: `${index} ${item}`,
        cells: [
          petOf(review, at),
          outline.item(item)?.label ?? item,
          locationWords(outline, to),
          actorWords(review, actor),
          reason || words("review/no-reason"),
        ],
      }))}
      empty={words("review/no-corrections")}
    />
  );
}
