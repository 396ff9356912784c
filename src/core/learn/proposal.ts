import type { StepTime } from "../procedure/index.ts";
import { inMinutes } from "../units/index.ts";
import type { Belief, Estimate } from "./step-model.ts";

/** Low, likely and high in minutes. */
export interface ProposedTime {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * Why a time is offered or not: it is (`offered`); no walk tells of the step; only one does; the likely time would hardly
 * move; or walks vary so much more than was planned that plan and evidence disagree.
 */
export type Offer = "offered" | "no-evidence" | "one-walk" | "hardly-moved" | "disagree";

const LEAST_WALKS = 2;
const LEAST_SHARE = 0.1;
const LEAST_MINUTES = 0.5;
const MOST_SPREAD = 1.5;

/** Returns the planner's figures moved by the evidence and stretched by the ratio of their spreads ([LRN3]); without evidence they are what they were. */
export function movedTime(
  belief: Belief,
  ratio: number,
  estimate: Estimate,
  { low, likely, high }: StepTime,
): ProposedTime {
  const moved = (time: number) => Math.exp(belief.mu + ratio * (Math.log(inMinutes(time)) - estimate.mu));
  return { low: moved(low), likely: moved(likely), high: moved(high) };
}

/** Returns whether a moved time is offered to the author, or why it is not ([LRN3]). */
export function offerOf(walks: number, ratio: number, planned: StepTime, { likely }: ProposedTime): Offer {
  if (walks === 0) return "no-evidence";
  if (walks < LEAST_WALKS) return "one-walk";
  if (ratio > MOST_SPREAD) return "disagree";
  const before = inMinutes(planned.likely);
  const by = Math.abs(likely - before);
  return by >= LEAST_SHARE * before && by >= LEAST_MINUTES ? "offered" : "hardly-moved";
}
