import type { Review } from "../../core/review/index.ts";
import { clockText, hourMinuteText, lengthText } from "../../core/units/index.ts";
import { counted, isOnPlan, laterWords } from "./review-words.ts";

const ENDS = { complete: "Complete", terminated: "Terminated", aborted: "Aborted" } as const;

/** How the walk ended in one line, then what there is to add, a sentence each. */
export function endingWords(review: Review): {
  readonly headline: string;
  readonly sentences: readonly string[];
} {
  const { end, petZero, actualFinish, plannedFinish, limit, margin } = review;
  if (petZero === null)
    return {
      headline: end ? `${ENDS[end.end]} before the clock was started` : "The clock was never started",
      sentences: ["Nothing was done, so there is nothing to compare with the plan.", ...reasonOf(review)],
    };
  const performed = review.steps.filter(({ ending }) => ending !== "not-performed");
  const done = performed.filter(({ ending }) => ending === "done").length;
  const skipped = performed.filter(({ ending }) => ending === "skipped").length;
  const planned = review.steps.filter((step) => step.planned !== null && step.ending !== "not-performed");
  const left = planned.filter(({ ending }) => ending === "open" || ending === "in-work").length;
  const isWhole = left === 0 && actualFinish !== null;
  const closed = end ? ENDS[end.end] : "Not closed yet";
  const headline = isWhole
    ? `${closed}, ${laterWords(review.finishDifference)}${isOnPlan(review.finishDifference) ? "" : " than planned"}`
    : `${closed}${end ? ` at ${hourMinuteText(end.at)}` : ""}`;
  const finish = [
    ...(actualFinish === null ? [] : [`last step over at ${clockText(actualFinish)}`]),
    ...(plannedFinish === null ? [] : [`planned finish ${clockText(plannedFinish)}`]),
  ].join(", ");
  const limitWords =
    limit === null || margin === null
      ? ""
      : margin >= 0
        ? `${lengthText(margin)} inside the limit of ${hourMinuteText(limit)}`
        : `${lengthText(margin)} over the limit of ${hourMinuteText(limit)}`;
  const closing = [
    ...(end ? [`closed at ${clockText(end.at)}`] : []),
    ...(limitWords ? [limitWords] : []),
  ].join(", ");
  const sentences = [
    `${counted(done, "step")} done${skipped > 0 ? `, ${skipped} skipped` : ""}${left > 0 ? `, ${left} of the plan not done` : ""}.`,
    ...[finish, closing].filter((words) => words !== "").map(sentence),
    ...reasonOf(review),
  ];
  return { headline, sentences };
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

function reasonOf({ end }: Review): string[] {
  return end?.reason ? [`Reason given: ${end.reason}`] : [];
}
