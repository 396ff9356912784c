export { SidePanel } from "./side-panel.tsx";
