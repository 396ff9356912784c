export { DroppedRow } from "./dropped-row.tsx";
export { HandoverSheet } from "./handover-sheet.tsx";
export { PrintSheet } from "./print-sheet.tsx";
export { PrintedBox } from "./printed-box.tsx";
export { branchWords, conditionWords, effectWords } from "./sheet-words.ts";
export { StrandMarks } from "./strand-marks.tsx";
