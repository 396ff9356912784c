import type { Review } from "../../core/review/index.ts";
import { words } from "../../words/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { actorWords, petOf } from "./review-words.ts";

/** Every outcome that a decision got, whether it was expected, and what it was before. */
export function DecisionTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-decisions"
      title={words("review/decisions")}
      columns={columns(
        "review/column-pet",
        "review/column-who",
        "review/column-asked",
        "review/column-came-out",
        "review/column-expected",
        "review/column-before",
      )}
      rows={review.decided.map(({ at, actor, decision: id, outcome, was }, index) => {
        const decision = review.outline.decision(id)?.decision;
        return {
          key: `${index} ${id}`,
          cells: [
            petOf(review, at),
            actorWords(review, actor),
            decision?.ask ?? id,
            <b key="outcome">{outcome}</b>,
            words(decision?.expect === outcome ? "review/as-expected" : "review/not-as-expected"),
            was ?? "–",
          ],
        };
      })}
      empty={words("review/no-decisions")}
    />
  );
}
