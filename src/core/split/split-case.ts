import { checkOutline } from "../check/index.ts";
import type { Plan, PlanOptions } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, Outline, ProcedureFile } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";

/** A procedure of which the best split is asked ([FIT3]). */
export interface SplitCase {
  readonly file: ProcedureFile;
  readonly outline: Outline;
  readonly options: Required<Pick<PlanOptions, "start" | "light">>;
  /** The steps that stay as they are. */
  readonly pinned: ReadonlySet<StepId>;
  /** The plan as the file has it: every decision as expected, without get-aheads. */
  readonly plan: Plan;
  /** What the checker says of the file as it is. */
  readonly findings: readonly Finding[];
}

/** The case of a procedure file, with the start and the light that it is planned with, and steps that are not to change. */
export function splitCase(
  { file, outline }: { readonly file: ProcedureFile; readonly outline: Outline },
  options: SplitCase["options"],
  pinned: ReadonlySet<StepId> = new Set(),
): SplitCase {
  return {
    file,
    outline,
    options,
    pinned,
    plan: planOf(outline, options),
    findings: checkOutline(outline, options),
  };
}
