import type { PlanOptions } from "../../core/plan/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { SplitAnswer } from "../../core/split/index.ts";

/** A question to the worker: a procedure, with the start and the light that it is planned with. */
export interface SplitRequest extends Required<Pick<PlanOptions, "start" | "light">> {
  readonly file: ProcedureFile;
}

/** What the worker has found so far. */
export interface SplitFound {
  /** `null` when the file is no procedure. */
  readonly answer: SplitAnswer | null;
  /** True when it looks no further. */
  readonly isLast: boolean;
}
