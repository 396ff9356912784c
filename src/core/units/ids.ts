import type { Brand } from "./brand.ts";

/** Id of a crew member, unique in `crew`. */
export type CrewId = Brand<string, "CrewId">;
/** Id of a place, unique in `places`. */
export type PlaceId = Brand<string, "PlaceId">;
/** Id of an item, unique in `items`. */
export type ItemId = Brand<string, "ItemId">;
/** Id of a window, unique in `windows`. */
export type WindowId = Brand<string, "WindowId">;
/** Id of a supply, unique among one crew member's `supplies`. */
export type SupplyId = Brand<string, "SupplyId">;
/** Id of a task, unique among `tasks` and the tasks of all contingencies. */
export type TaskId = Brand<string, "TaskId">;
/** Id of a step, unique in the whole procedure, contingencies included. */
export type StepId = Brand<string, "StepId">;
/** Id of a decision, unique in the whole procedure. */
export type DecisionId = Brand<string, "DecisionId">;
/** Id of a record, unique in its step. */
export type RecordId = Brand<string, "RecordId">;
/** Id of a contingency, unique in `contingencies`. */
export type ContingencyId = Brand<string, "ContingencyId">;
/** Id of a watch, unique in `watches`. */
export type WatchId = Brand<string, "WatchId">;
/** Id of a state, unique in `states`. */
export type StateId = Brand<string, "StateId">;
/** Id of a picture, unique in `pictures`. */
export type PictureId = Brand<string, "PictureId">;
/** Id of a walk: the subject of its log entries. */
export type WalkId = Brand<string, "WalkId">;

/** What an id looks like: lower-case letters, digits and hyphens, a letter or digit first. */
export const ID_PATTERN = /^[a-z0-9][a-z0-9-]*$/;
