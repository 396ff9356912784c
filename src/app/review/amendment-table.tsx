import type { AmendmentReview, Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { actorWords, petOf } from "./review-words.ts";

/** The amendments of the plan: who, when and why, each change, and what it did to finish and margin by the forecast at its time. */
export function AmendmentTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-amendments"
      title={words("review/amendments")}
      columns={columns(
        "review/column-pet",
        "review/column-who",
        "review/column-reason",
        "review/column-changes",
        "review/column-finish",
        "review/column-margin",
        "review/column-seen-by",
      )}
      rows={review.amendments.map((one) => ({
        key: `${one.source} ${one.id}`,
        cells: [
          one.pet === null ? words("review/before-the-clock") : petOf(review, one.at),
          actorWords(review, one.actor),
          one.reason || words("review/no-reason"),
          <ul key="changes" className="plain-list">
            {one.changes.map((change) => {
              const text = inWords(change);
              return <li key={text}>{text}</li>;
            })}
          </ul>,
          finishWords(one),
          marginWords(one),
          seenWords(review, one),
        ],
      }))}
      empty={words("review/no-amendments")}
    />
  );
}

const finish = (at: Duration | null) => (at === null ? "–" : words("review/finish-at", { at }));
const margin = (left: Duration | null) => (left === null ? "–" : words("review/margin-of", { margin: left }));

const finishWords = ({ finish: { before, after } }: AmendmentReview) =>
  `${finish(before)} → ${finish(after)}`;
const marginWords = ({ margin: { before, after } }: AmendmentReview) =>
  `${margin(before)} → ${margin(after)}`;

function seenWords(review: Review, { seen }: AmendmentReview): string {
  if (seen.length === 0) return "–";
  return seen
    .map(({ actor, at }) =>
      words("review/seen-at", { who: actorWords(review, actor), at: petOf(review, at) }),
    )
    .join(words("figures/between"));
}
