export type { NewCrewMember, NewProcedure } from "./added-rows.ts";
export { copyOf, newManuscript, performersBeside, stepAdded, taskAdded } from "./added-rows.ts";
export { rowsDropped, rowsDuplicated, rowsMoved, rowsShifted } from "./chosen-rows.ts";
export type { TableReading } from "./column-uses.ts";
export { performersIn, tableReading } from "./column-uses.ts";
export { rowsCopied, textPasted } from "./copied-rows.ts";
export { freeIdsIn } from "./free-id.ts";
export type { Stepped, Written } from "./gesture-on.ts";
export { gestureOn, redone, typedOn, undone } from "./gesture-on.ts";
export type { OfferedTime, PlacePair } from "./joined-places.ts";
export { offeredTime, placeAdded, placesJoined, placesParted } from "./joined-places.ts";
export type { TextPlace } from "./language-text.ts";
export {
  languageAdded,
  languageDropped,
  languageTextChanges,
  openTexts,
  placeName,
} from "./language-text.ts";
export { performerTurned, stepLinked, stepUnlinked, waitsSet } from "./linked-step.ts";
export type { About, Anchor, GestureName, KeptManuscript, Manuscript } from "./manuscript.ts";
export { keptOf, MOST_GESTURES, manuscriptFrom, manuscriptOf } from "./manuscript.ts";
export type { CrewOffers, HandOver } from "./offers.ts";
export { handedOver, offersAt } from "./offers.ts";
export type { ColumnUse, PastedTable } from "./pasted-table.ts";
export { headingNames, pastedTable } from "./pasted-table.ts";
export type { Proposal } from "./proposal.ts";
export type { TimeUnit } from "./read-time.ts";
export { readTime } from "./read-time.ts";
export type { Wanted } from "./replaced-text.ts";
export { rowsWith, textReplaced } from "./replaced-text.ts";
export type { FileStep, FileTask, SheetRow } from "./sheet.ts";
export { contingencyKey, placedStep, sheetOf, taskKey } from "./sheet.ts";
export { stepSplit, stepsJoined } from "./split-and-join.ts";
export type { RowTaken, TableTaken } from "./table-put.ts";
export { tablePut } from "./table-put.ts";
export { waitsIn } from "./typed-waits.ts";
