export { HandoverSheet } from "./handover-sheet.tsx";
export { PrintSheet } from "./print-sheet.tsx";
