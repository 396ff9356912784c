export { ChangeList } from "./change-list.tsx";
export { CompareChoice } from "./compare-choice.tsx";
export { type ComparedProcedure, CompareView } from "./compare-view.tsx";
export { changedInWords, differenceOf } from "./compared-steps.ts";
export { droppedPlaces, firstOf } from "./dropped-places.ts";
export { MergeView } from "./merge-view.tsx";
export { RevisionTable } from "./revision-table.tsx";
export { useBothInTexts } from "./use-both-in-texts.ts";
export { type Choice, type Compared, useCompared } from "./use-compared.ts";
