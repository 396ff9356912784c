export { planIn } from "./plan-in.ts";
export { StepAlerts } from "./step-alerts.tsx";
export { StepDo } from "./step-do.tsx";
export { languageName } from "./text-choice.ts";
export { TextInLanguage, TextMark } from "./text-in-language.tsx";
export { TextsField, TextsTurn } from "./texts-field.tsx";
export { useFoldedTexts, useLedgerTexts } from "./use-ledger-texts.ts";
export type { Texts } from "./use-texts.ts";
export { markedInText, TextsContext, useShownTexts, useTexts } from "./use-texts.ts";
