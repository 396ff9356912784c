import type { Outline } from "../../core/procedure/index.ts";
import type { Remark } from "../../core/remarks/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** What a remark is about, in words: the whole revision, a step, or one that is no more. */
export function aboutWords(outline: Outline, { step }: Remark): string {
  if (step === null) return words("remarks/whole");
  const entry = outline.step(step as StepId);
  return entry
    ? words("remarks/step", { number: entry.number, action: entry.step.do })
    : words("remarks/gone-step", { step });
}
