export type {
  AppendOptions,
  AppendOutcome,
  Comparison,
  Engine,
  Keep,
  RefusedEntry,
  StoredEntry,
  StoredWalk,
} from "./engine.ts";
export { EngineTroubleError } from "./engine.ts";
export type { EnginePlace } from "./open-engine.ts";
export { openEngine } from "./open-engine.ts";
export { pageOf } from "./page-limit.ts";
export { restoreStore } from "./sqlite-restore.ts";
