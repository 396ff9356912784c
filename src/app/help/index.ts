export { HelpButton } from "./help-button.tsx";
export type { HelpScreen } from "./help-contents.ts";
export { HelpPanel } from "./help-panel.tsx";
