export type { Brand } from "./brand.ts";
export type { Rounding } from "./clock-text.ts";
export { clockText, hourMinuteText, inWhole } from "./clock-text.ts";
export type { Duration, Metres } from "./duration.ts";
export {
  DURATION_PATTERN,
  formatDuration,
  inMinutes,
  inSeconds,
  LONGEST_DURATION,
  longest,
  minus,
  NO_TIME,
  ofSeconds,
  parseDuration,
  plus,
} from "./duration.ts";
export type {
  ContingencyId,
  CrewId,
  DecisionId,
  ItemId,
  PictureId,
  PlaceId,
  RecordId,
  StateId,
  StepId,
  SupplyId,
  TaskId,
  WalkId,
  WatchId,
  WindowId,
} from "./ids.ts";
export { ID_PATTERN } from "./ids.ts";
export type { Instant } from "./instant.ts";
export { between, dayOfYear, formatInstant, INSTANT_PATTERN, later, parseInstant } from "./instant.ts";
export { Listeners } from "./listeners.ts";
export { once } from "./once.ts";
