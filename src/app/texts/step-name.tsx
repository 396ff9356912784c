import type { Outline, Step } from "../../core/procedure/index.ts";
import { StepDo } from "./step-do.tsx";

interface StepNameProps {
  /** The procedure as it is shown, with marks in its texts. */
  readonly outline: Outline;
  /** The step as it was written, such as one that walks tell of. */
  readonly step: Pick<Step, "id" | "do">;
}

/** What is done in a step that was worked out of the author's procedure, in the language that the reader chose ([WRD4]). */
export function StepName({ outline, step }: StepNameProps) {
  return <StepDo step={outline.step(step.id)?.step ?? step} isMarked={false} />;
}
