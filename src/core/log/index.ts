export type { AnswerLimits } from "./answer-time.ts";
export { AnswerTime } from "./answer-time.ts";
export type { Backoff } from "./backoff.ts";
export { waitAfter } from "./backoff.ts";
export type { Cursor } from "./cursor.ts";
export { readCursor, writeCursor } from "./cursor.ts";
export { deviceOf } from "./device-of.ts";
export type { Entry, ReadEntry, WireEntry } from "./entry.ts";
export { compareEntries, keyOf, readEntry } from "./entry.ts";
export type { EntryPage, EntryStore, TakenIn } from "./entry-store.ts";
export type {
  FarHub,
  Follower,
  Hello,
  HubWalk,
  Invitation,
  Joined,
  PushAnswer,
  PushResult,
  Refusal,
  SequenceGap,
} from "./exchange.ts";
export {
  beyondSchema,
  FARTHEST_AHEAD,
  helloSchema,
  hubClockSchema,
  hubErrorSchema,
  hubWalksSchema,
  invitationSchema,
  joinedSchema,
  presenceSchema,
  pushAnswerSchema,
} from "./exchange.ts";
export type { Fact, FactData, FactName, ReadFact } from "./fact.ts";
export { isKnownType, typeOf } from "./fact.ts";
export type { BatchLimits } from "./first-batch.ts";
export { firstBatch } from "./first-batch.ts";
export type { HybridTime } from "./hybrid-clock.ts";
export { HYBRID_TIME_PATTERN, laterOf, receive, tick, wallOf } from "./hybrid-clock.ts";
export { jsonOf } from "./json-of.ts";
export type { LinkTime } from "./latch.ts";
export type { LinkParts, LinkSettings } from "./link.ts";
export { Link } from "./link.ts";
export type { FarMessage, FarSide, NearSide, Settled } from "./link-sides.ts";
export { TurnedAwayError, UnreachableError } from "./link-sides.ts";
export type { LinkState } from "./link-status.ts";
export type { MergedEntries } from "./merge.ts";
export { isSameButStamp, isSameEntry, mergeEntries } from "./merge.ts";
export { pairedWith } from "./paired-with.ts";
export { highestWithin, isTooFarAhead, restamp } from "./restamp.ts";
export { retryAfterOf } from "./retry-after.ts";
export type { Role, RoleRefusal } from "./role.ts";
export { mayLead, mayMark, ROLES, roleRefusal } from "./role.ts";
export type { ClockOffset, RoundTrip } from "./round-trips.ts";
export { clockOffset, WORTH_TELLING } from "./round-trips.ts";
export type { Draft, Pen } from "./stamp.ts";
export { stamp, UnreadableEntryError } from "./stamp.ts";
export type { StreamEvent } from "./stream-message.ts";
export { messageOf } from "./stream-message.ts";
export type { LineProblem, ReadLines } from "./wire-format.ts";
export { readLines, writeLines } from "./wire-format.ts";
