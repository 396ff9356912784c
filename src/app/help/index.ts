export { HelpButton } from "./help-button.tsx";
export { HelpPanel } from "./help-panel.tsx";
export type { HelpScreen } from "./help-sections.ts";
