export type {
  AppendOptions,
  AppendOutcome,
  Engine,
  Keep,
  KeptEntry,
  KeptWalk,
  RefusedEntry,
  Standing,
} from "./engine.ts";
export { EngineTroubleError } from "./engine.ts";
export type { EnginePlace } from "./open-engine.ts";
export { openEngine } from "./open-engine.ts";
