import type { RecordKnown, Review } from "../../core/review/index.ts";
import { reviewCsv, reviewDocument, reviewXes } from "../../core/review/index.ts";
import { forMachines, inWords } from "../../words/index.ts";

/** The text of a file that holds a review, and what is known of its log as a record where the form has room for it. */
export function reviewText(review: Review, record: RecordKnown, kind: "csv" | "json" | "xes"): string {
  if (kind === "csv") return forMachines(() => reviewCsv(review, inWords));
  return kind === "xes"
    ? reviewXes(review, record)
    : forMachines(() => `${JSON.stringify(reviewDocument(review, inWords, record), null, 2)}\n`);
}
