import { inWords, message } from "../../words/index.ts";
import { ofSeconds } from "../units/index.ts";
import type { StepProgress } from "./ledger.ts";

/** Why a step was skipped, in words; empty when nobody said. */
export function skipReason({
  skipReason: said,
  leftOut,
}: Pick<StepProgress, "skipReason" | "leftOut">): string {
  if (leftOut === null) return said;
  const needed = ofSeconds(leftOut.needed);
  return inWords(
    leftOut.margin < 0
      ? message("walk/left-out-spent", { needed })
      : message("walk/left-out", { needed, margin: ofSeconds(leftOut.margin) }),
  );
}
