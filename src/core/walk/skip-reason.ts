import type { Duration } from "../units/index.ts";
import { lengthText, ofSeconds } from "../units/index.ts";
import type { StepProgress } from "./ledger.ts";

/** Why a step was skipped, in words; empty when nobody said. */
export function skipReason({
  skipReason: said,
  leftOut,
}: Pick<StepProgress, "skipReason" | "leftOut">): string {
  if (leftOut === null) return said;
  const { needed, margin } = leftOut;
  const left = margin < 0 ? "spent" : lengthText(ofSeconds(margin) as Duration);
  return `Left out: ${lengthText(ofSeconds(needed))} of work, and the margin is ${left}`;
}
