import type { Learned } from "../../core/learn/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import type { ComparedWalks, ForecastScores } from "../../core/walks-compared/index.ts";

/** A question to the worker: a procedure, and the logs of its walks as lines. */
export interface WalksRequest {
  readonly file: ProcedureFile;
  readonly logs: readonly string[];
  /** Steps that have another id now, by the author's word. */
  readonly renamed: Renamed;
}

/** Which id a step has now, by the one that it had in an earlier revision ([LRN6]). */
export type Renamed = Readonly<Record<StepId, StepId>>;

/** What walks tell of a procedure. It has no outline, which has functions: whoever asked has one. */
export interface WalksTold {
  readonly learned: Omit<Learned, "outline">;
  readonly compared: Omit<ComparedWalks, "outline">;
  /** How the forecasts did, which takes longest; `null` while it is worked out. */
  readonly scores: ForecastScores | null;
}
