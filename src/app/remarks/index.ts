export { RemarksPanel } from "./remarks-panel.tsx";
export { type RemarksHere, useRemarks } from "./use-remarks.ts";
