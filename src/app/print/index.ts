export { PrintSheet, type PrintSheetProps } from "./print-sheet.tsx";
