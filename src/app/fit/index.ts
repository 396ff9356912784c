export { FitPanel } from "./fit-panel.tsx";
export type { FitSubject } from "./fit-request.ts";
