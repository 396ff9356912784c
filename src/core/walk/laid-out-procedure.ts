import type { Outline, ProcedureFile } from "../procedure/index.ts";

/** A procedure file together with its outline. */
export interface LaidOutProcedure {
  readonly file: ProcedureFile;
  readonly outline: Outline;
}
