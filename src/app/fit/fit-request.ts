import type { Fit } from "../../core/fit/index.ts";
import type { PlanOptions } from "../../core/plan/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { Duration, Instant, TaskId } from "../../core/units/index.ts";

/** What is asked about: a procedure with the start and the light it is planned with, or the log of a walk at an instant. */
export type FitSubject =
  | ({ readonly kind: "plan"; readonly file: ProcedureFile } & Required<Pick<PlanOptions, "start" | "light">>)
  | { readonly kind: "walk"; readonly lines: string; readonly at: Instant };

/** A question to the worker. */
export interface FitRequest {
  readonly subject: FitSubject;
  readonly limit: Duration | null;
  /** The least chance of being done by the limit; `null` to go by likely times alone. */
  readonly chance: number | null;
  /** The tasks of which nothing more is done. */
  readonly leftOut: readonly TaskId[];
}

/** The answer of the worker. */
export interface FitAnswer {
  /** The PET from which on it holds; `null` when there is no procedure or walk to ask about. */
  readonly now: Duration | null;
  readonly fit: Fit | null;
}
