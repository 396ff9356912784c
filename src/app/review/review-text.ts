import type { Review } from "../../core/review/index.ts";
import { reviewCsv, reviewDocument, reviewXes } from "../../core/review/index.ts";
import { inWords } from "../../words/index.ts";

/** The text of a file that holds a review. */
export function reviewText(review: Review, kind: "csv" | "json" | "xes"): string {
  if (kind === "csv") return reviewCsv(review, inWords);
  return kind === "xes" ? reviewXes(review) : `${JSON.stringify(reviewDocument(review, inWords), null, 2)}\n`;
}
