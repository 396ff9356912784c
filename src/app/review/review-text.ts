import type { Review } from "../../core/review/index.ts";
import { reviewCsv, reviewDocument, reviewXes } from "../../core/review/index.ts";

/** The text of a file that holds a review. */
export function reviewText(review: Review, kind: "csv" | "json" | "xes"): string {
  if (kind === "csv") return reviewCsv(review);
  return kind === "xes" ? reviewXes(review) : `${JSON.stringify(reviewDocument(review), null, 2)}\n`;
}
