import type { Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { ofSeconds } from "../units/index.ts";
import type { StepProgress } from "./ledger.ts";

/**
 * Returns why a step was skipped: a message of this program, or the text that somebody wrote. The text is empty when
 * nobody wrote one.
 */
export function skipReason({
  skipReason: written,
  leftOut,
}: Pick<StepProgress, "skipReason" | "leftOut">): Said {
  if (leftOut === null) return written;
  const needed = ofSeconds(leftOut.needed);
  return leftOut.margin < 0
    ? message("walk/left-out-spent", { needed })
    : message("walk/left-out", { needed, margin: ofSeconds(leftOut.margin) });
}
