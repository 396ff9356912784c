import type { Step } from "../../core/procedure/index.ts";
import { TextInLanguage } from "./text-in-language.tsx";

interface StepDoProps {
  readonly step: Pick<Step, "id" | "do">;
  /** False where the same text stands beside it with its mark. */
  readonly isMarked?: boolean;
}

/** What is done in a step, in the language that the reader chose. */
export function StepDo({ step, isMarked = true }: StepDoProps) {
  return (
    <TextInLanguage list="steps" id={step.id} field="do" isMarked={isMarked}>
      {step.do}
    </TextInLanguage>
  );
}
