export type {
  ActualWait,
  ActualWaitOn,
  ConfirmReview,
  LaneReview,
  LaneWait,
  NoteReview,
  RecordReview,
  Review,
  StepEnding,
  StepReview,
  Stretch,
  StruckReview,
  TaskReview,
  TaskStretch,
} from "./review.ts";
export { reviewCsv } from "./review-csv.ts";
export type { ReviewDocument } from "./review-document.ts";
export { reviewDocument, waitWords } from "./review-document.ts";
export { reviewOf } from "./review-of.ts";
export { reviewXes } from "./review-xes.ts";
