export type { AnswerLimits } from "./answer-time.ts";
export { AnswerTime } from "./answer-time.ts";
export type { Backoff } from "./backoff.ts";
export { waitAfter } from "./backoff.ts";
export type { Cursor } from "./cursor.ts";
export { readCursor, writeCursor } from "./cursor.ts";
export type {
  FarHub,
  Follower,
  Hello,
  HubWalk,
  Invitation,
  Joined,
  OpenInvitation,
  PushAnswer,
  PushResult,
  RefusalReason,
  SequenceGap,
} from "./exchange.ts";
export {
  beyondSchema,
  helloSchema,
  hubClockSchema,
  hubErrorSchema,
  hubWalksSchema,
  invitationSchema,
  joinedSchema,
  presenceSchema,
  pushAnswerSchema,
} from "./exchange.ts";
export type { BatchLimits } from "./first-batch.ts";
export { firstBatch } from "./first-batch.ts";
export type { HubManner } from "./hub-answers.ts";
export { HubRefusedError } from "./hub-answers.ts";
export type { HubClientParts, JoinRequest, Prover, RequestOptions } from "./hub-client.ts";
export { HubClient } from "./hub-client.ts";
export { hubFarSide } from "./hub-far-side.ts";
export type { AskHub, HubAnswer, HubRequest } from "./hub-request.ts";
export type { JoinProof, JoinStatement, SigningKey } from "./join-proof.ts";
export { joinText } from "./join-proof.ts";
export type { LinkTime } from "./latch.ts";
export { aborted, Latch } from "./latch.ts";
export type { LinkParts } from "./link.ts";
export { Link } from "./link.ts";
export type { LinkSettings } from "./link-settings.ts";
export type { FarMessage, FarSide, NearSide, Settled } from "./link-sides.ts";
export { TurnedAwayError, UnreachableError } from "./link-sides.ts";
export type { Fetching, LinkState } from "./link-state.ts";
export { pairedWith } from "./paired-with.ts";
export { pushInParts } from "./push-in-parts.ts";
export type { RoundTrip } from "./round-trips.ts";
export { clockOffsetOf } from "./round-trips.ts";
export type { StreamEvent } from "./stream-message.ts";
export { messageOf } from "./stream-message.ts";
export type { TimeLimit } from "./time-limit.ts";
export { timeLimit } from "./time-limit.ts";
