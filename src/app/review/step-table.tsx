import { waitMessage } from "../../core/course/index.ts";
import type { Review, StepReview } from "../../core/review/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { behindTone, callsOf } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { laterWords } from "./review-words.ts";

interface StepTableProps {
  readonly review: Review;
  /** The step that the reader came for; `null` for none. */
  readonly sought: StepId | null;
}

/** Every step as planned and as flown, with the waits before it. */
export function StepTable({ review, sought }: StepTableProps) {
  return (
    <ReviewTable
      id="review-steps"
      title={words("review/steps")}
      columns={columns(
        "review/column-number",
        "review/column-who",
        "review/column-step",
        "review/column-planned",
        "review/column-as-flown",
        "review/column-over",
        "review/column-waits",
      )}
      rows={review.steps.map((step) => ({ ...stepRow(review, step), isSought: step.step === sought }))}
      empty={words("review/no-steps")}
    />
  );
}

function stepRow(review: Review, step: StepReview) {
  const { outline } = review;
  const entry = outline.step(step.step);
  const { planned, actual, ending, finishDifference } = step;
  return {
    key: step.step,
    cells: [
      <b key="number">{entry?.number}</b>,
      entry ? callsOf(outline, entry.step.by) : "",
      entry?.step.do,
      planned ? `${clockText(planned.start)}–${clockText(planned.finish)}` : words("review/not-planned"),
      actual && ending === "done"
        ? `${clockText(actual.start)}–${clockText(actual.finish)}`
        : ending === "done"
          ? ""
          : words(`review/ending-${ending}`),
      <span key="difference" data-tone={behindTone(ending === "done" ? finishDifference : null)}>
        {ending === "done" ? laterWords(finishDifference) : "–"}
      </span>,
      step.waits.map((wait) => inWords(waitMessage(outline, wait))).join(words("figures/between-clauses")) ||
        "–",
    ],
  };
}
