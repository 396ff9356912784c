export type { AmendmentReview, DroppedStep } from "./amendment-review.ts";
export { amendmentsReviewed } from "./amendment-review.ts";
export type { DelayShare } from "./delay.ts";
export type { Handover, HandoverLane } from "./handover.ts";
export { handoverOf } from "./handover.ts";
export type { RecordKnown } from "./record.ts";
export type { ReopeningReview } from "./reopenings.ts";
export type {
  CausedWait,
  ConfirmReview,
  LaneReview,
  NoteReview,
  ReadingReview,
  RecordReview,
  Review,
  StepEnding,
  StepReview,
  StruckReview,
  TaskReview,
  TaskStretch,
  WaitTotal,
} from "./review.ts";
export { reviewCsv } from "./review-csv.ts";
export type { ReviewDocument } from "./review-document.ts";
export { reviewDocument } from "./review-document.ts";
export { reviewOf } from "./review-of.ts";
export { reviewXes } from "./review-xes.ts";
export { waitedMessage } from "./waited-message.ts";
