export { PrintSheet } from "./print-sheet.tsx";
