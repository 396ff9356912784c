import type { StepId, WalkId } from "../../core/units/index.ts";

/** Where the review of a walk is, opened at the moment of a step; at its beginning with `null`. */
export function reviewPath(walk: WalkId, step: StepId | null): string {
  const review = `/review/${encodeURIComponent(walk)}`;
  return step === null ? review : `${review}?step=${encodeURIComponent(step)}`;
}
