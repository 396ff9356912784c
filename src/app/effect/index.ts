export { finishWords, spareWords } from "./effect-words.ts";
export { FindingChanges } from "./finding-changes.tsx";
export { FinishShift } from "./finish-shift.tsx";
export type { SidesRow } from "./sides-table.tsx";
export { bothInWords, SidesTable } from "./sides-table.tsx";
