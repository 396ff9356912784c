export { SplitPanel } from "./split-panel.tsx";
export type { SplitRequest } from "./split-request.ts";
