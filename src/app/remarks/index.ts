export { RemarksPanel } from "./remarks-panel.tsx";
export { takeInRemarks } from "./take-in-remarks.ts";
export { type RemarksHere, useRemarks } from "./use-remarks.ts";
