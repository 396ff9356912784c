export { type BundledLight, bundledLight } from "./bundled-light.ts";
export type { ProcedureSummary } from "./procedure-summary.ts";
export { procedureText } from "./procedure-text.ts";
export { type ShelfActions, ShelfView, type TakenOff } from "./shelf-view.tsx";
export { takeIn } from "./take-in.ts";
export { useProcedureText } from "./use-procedure-text.ts";
export { revisionsOf, useRevisions } from "./use-revisions.ts";
export { useShelf } from "./use-shelf.ts";
export { useStorageWords } from "./use-storage-words.ts";
