import type { Outline } from "../../core/procedure/index.ts";
import type { Overruled } from "../../core/walk/index.ts";
import { actorsText } from "../follow/index.ts";

/** Tells the author of a mark that did not count what happened to it. */
export function overruledWords({ step, lost, by }: Overruled, outline: Outline): string {
  const entry = outline.step(step);
  const who = by === null ? "Another device" : actorsText([{ actor: by }], outline.crew);
  const what = `step ${entry?.number ?? step} “${entry?.step.do ?? step}”`;
  return lost === "done"
    ? `Your mark of ${what} did not count: ${who} had skipped it first. Open the step to change that.`
    : `Your skip of ${what} did not count: ${who} had marked it done first. Open the step to change that.`;
}
