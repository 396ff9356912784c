import type { Step } from "../../core/procedure/index.ts";
import { AlertBox } from "../parts/index.ts";
import { TextInLanguage } from "./text-in-language.tsx";

/** The warnings, cautions and notes before a step, in the order in which they are read. */
export function StepAlerts({ step }: { readonly step: Pick<Step, "id" | "alerts"> }) {
  return step.alerts.map((alert, place) => (
    <AlertBox key={alert.text} level={alert.level}>
      <TextInLanguage list="steps" id={step.id} field="alerts" part={place}>
        {alert.text}
      </TextInLanguage>
    </AlertBox>
  ));
}
