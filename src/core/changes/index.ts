export { applyChanges } from "./apply-changes.ts";
export type { Applied, ChangeProblem } from "./change-problem.ts";
export { changesBetween } from "./changes-between.ts";
export type { EditedText } from "./edit-text.ts";
export { editText, UneditableTextError, writtenOver } from "./edit-text.ts";
export { inverseOf, NeverAppliedError } from "./inverse-of.ts";
export type { Conflict, Merged } from "./merge-changes.ts";
export { mergeChanges } from "./merge-changes.ts";
export { sameJson } from "./same-json.ts";
