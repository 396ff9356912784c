export type { ShelfText } from "./bundled-procedures.ts";
export type { ProcedureSummary } from "./procedure-summary.ts";
export type { ShelfMessage } from "./shelf-message.ts";
export { type ShelfActions, ShelfView } from "./shelf-view.tsx";
export { useProcedureText } from "./use-procedure-text.ts";
export { type Shelf, useShelf } from "./use-shelf.ts";
