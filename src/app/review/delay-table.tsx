import type { DelayShare, Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { behindTone, stepWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { laterWords } from "./review-words.ts";

/** What made the delay: the chain of steps to the last finish, with the share of each ([REV6]). */
export function DelayTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-delay"
      title={words("review/delay")}
      columns={columns(
        "review/column-step",
        "review/column-share",
        "review/column-took",
        "review/column-planned",
        "review/column-low-high",
      )}
      rows={review.delay.map((one) => ({
        key: one.step,
        cells: [
          stepWords(review.outline, one.step),
          <b key="share" data-tone={behindTone(one.share)}>
            {laterWords(one.share)}
          </b>,
          tookWords(one),
          one.plannedTime === null ? words("review/not-planned") : lengthOf(one.plannedTime),
          words("review/low-high", { low: one.low, high: one.high }),
        ],
      }))}
      empty={words("review/no-delay")}
    />
  );
}

const lengthOf = (time: Duration): string => words("figures/length", { time });

function tookWords({ time, low, high }: DelayShare): string {
  if (time > high) return words("review/took-over-high", { time });
  return time < low ? words("review/took-under-low", { time }) : lengthOf(time);
}
