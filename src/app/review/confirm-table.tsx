import type { Review } from "../../core/review/index.ts";
import { words } from "../../words/index.ts";
import { callsOf, stepWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { actorWords, petOf } from "./review-words.ts";

/** The confirmations that were given, and those that are missing at steps that were done. */
export function ConfirmTable({ review }: { readonly review: Review }) {
  const { outline } = review;
  return (
    <ReviewTable
      id="review-confirmations"
      title={words("review/confirmations")}
      columns={columns(
        "review/column-step",
        "review/column-to-confirm",
        "review/column-by",
        "review/column-given-by",
        "review/column-pet",
      )}
      rows={review.steps.flatMap(({ step, ending, confirm }) =>
        confirm && (confirm.given || ending === "done")
          ? [
              {
                key: step,
                cells: [
                  stepWords(outline, step),
                  confirm.text,
                  callsOf(outline, [confirm.by]),
                  confirm.given ? (
                    actorWords(review, confirm.given.actor)
                  ) : (
                    <b key="missing">{words("review/csv-missing")}</b>
                  ),
                  confirm.given ? petOf(review, confirm.given.at) : "–",
                ],
              },
            ]
          : [],
      )}
      empty={words("review/no-confirmations")}
    />
  );
}
