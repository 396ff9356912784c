import type { Course } from "../course/index.ts";
import type { Change } from "../procedure/index.ts";
import type { Duration, Instant, StepId } from "../units/index.ts";
import type { LaidOutProcedure } from "./laid-out-procedure.ts";

/**
 * What an amendment does to a step. `brought`: it stood in a contingency before. `reassigned`: it has other performers.
 * `moved`: it stands elsewhere in the plan. `changed`: anything else. Of several the first in this order counts.
 */
export type AmendedHow = "added" | "brought" | "dropped" | "reassigned" | "moved" | "changed";

/** A step that an amendment touches. */
export interface AmendedStep {
  readonly step: StepId;
  readonly how: AmendedHow;
}

/** The plan at an amendment: what was not complete then, planned from the state of the walk at its time ([AMD2]). */
export interface Replanning {
  /** The forecast at the time of the amendment without it; `null` when there was none. */
  readonly before: Course | null;
  /** The forecast at the time of the amendment with it, which is the plan from then on; `null` when there was none. */
  readonly after: Course | null;
}

/** An amendment of the plan that counts ([AMD1]). */
export interface Amendment {
  /** Source of the entry, which with `id` names the amendment. */
  readonly source: string;
  readonly id: string;
  readonly at: Instant;
  /** Its PET; `null` when the plan was amended before the clock was started. */
  readonly pet: Duration | null;
  /** The lead who amended the plan; `null` when the entry names nobody. */
  readonly actor: string | null;
  readonly reason: string;
  /** The procedure that was in force, to which the changes were made. */
  readonly before: LaidOutProcedure;
  readonly changes: readonly Change[];
  /** The steps that are otherwise with it, those of the plan in reading order and then the dropped ones. */
  readonly steps: readonly AmendedStep[];
  readonly replanned: Replanning;
}

/** Somebody has seen an amendment ([AMD4]). */
export interface AmendmentSeen {
  /** Source and id of the amendment's entry. */
  readonly amendment: { readonly source: string; readonly id: string };
  readonly at: Instant;
  readonly actor: string | null;
  /** The source on which it was seen. */
  readonly source: string;
}
