import type { Review } from "../../core/review/index.ts";
import { inWords, words } from "../../words/index.ts";
import { isOnPlan } from "./review-words.ts";

/** One line on how the walk ended, then one sentence for each thing to add. */
export function endingWords(review: Review): {
  readonly headline: string;
  readonly sentences: readonly string[];
} {
  const { end, petZero, actualFinish } = review;
  if (petZero === null)
    return {
      headline: words(end ? `review/never-${end.end}` : "review/never-started"),
      sentences: [words("review/nothing-done"), ...reasonOf(review)],
    };
  const performed = review.steps.filter(({ ending }) => ending !== "not-performed");
  const done = performed.filter(({ ending }) => ending === "done").length;
  const skipped = performed.filter(({ ending }) => ending === "skipped").length;
  const planned = review.steps.filter((step) => step.planned !== null && step.ending !== "not-performed");
  const left = planned.filter(({ ending }) => ending === "open" || ending === "in-work").length;
  // A walk that left out what was planned is not earlier than its plan, however early it ended.
  const isWhole = planned.every(({ ending }) => ending === "done") && actualFinish !== null;
  return {
    headline: isWhole ? wholeWords(review) : endWords(review),
    sentences: [
      doneWords(done, skipped, left),
      ...finishWords(review),
      ...closingWords(review),
      ...reasonOf(review),
    ],
  };
}

const inRow = (...texts: readonly string[]): string => texts.join(words("figures/between"));

/** The end of a walk in which every planned step was done, with how far its finish was off the plan. */
function wholeWords({ end, finishDifference }: Review): string {
  const ended = words(`review/end-${end ? end.end : "open"}`);
  if (finishDifference === null) return inRow(ended, "–");
  if (isOnPlan(finishDifference)) return inRow(ended, words("review/on-plan"));
  const key = finishDifference > 0 ? "review/later-than-planned" : "review/earlier-than-planned";
  return inRow(ended, words(key, { time: finishDifference }));
}

function endWords({ end }: Review): string {
  return end ? words(`review/end-${end.end}-at`, { at: end.at }) : words("review/end-open");
}

function doneWords(done: number, skipped: number, left: number): string {
  if (skipped > 0 && left > 0) return words("review/done-skipped-left", { done, skipped, left });
  if (skipped > 0) return words("review/done-skipped", { done, skipped });
  return left > 0 ? words("review/done-left", { done, left }) : words("review/done", { done });
}

function finishWords({ actualFinish: last, plannedFinish: planned }: Review): string[] {
  if (last !== null && planned !== null) return [words("review/last-and-planned", { last, planned })];
  if (last !== null) return [words("review/last", { last })];
  return planned === null ? [] : [words("review/planned-finish", { planned })];
}

function closingWords({ end, limit, margin: time }: Review): string[] {
  if (limit === null || time === null) return end ? [words("review/closed", { at: end.at })] : [];
  const isInside = time >= 0;
  return [
    end
      ? words(isInside ? "review/closed-inside" : "review/closed-over", { at: end.at, time, limit })
      : words(isInside ? "review/inside" : "review/over", { time, limit }),
  ];
}

function reasonOf({ end }: Review): string[] {
  return end?.reason ? [words("review/reason-given", { reason: inWords(end.reason) })] : [];
}
