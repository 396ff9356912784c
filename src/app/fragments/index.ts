export { FragmentsPanel } from "./fragments-panel.tsx";
