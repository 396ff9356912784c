export { BesidePage } from "./beside-page.tsx";
export { SidePanel } from "./side-panel.tsx";
