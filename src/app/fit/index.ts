export type { FittingTasks, OnAmend } from "./fit-answer-view.tsx";
export { FitPanel } from "./fit-panel.tsx";
export type { FitSubject } from "./fit-request.ts";
