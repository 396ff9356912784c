import type { Course } from "../../core/course/index.ts";
import { marginOf } from "../../core/course/index.ts";
import type { Plan } from "../../core/plan/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import type { WindowSpans } from "../../core/window/index.ts";

/** The plan whose times stand on a printed sheet. */
export interface PrintedPlan {
  /** `null` when there is no plan. */
  readonly course: Course | null;
  /** Limit − finish, below zero when over; `null` without a limit or a plan. */
  readonly margin: Duration | null;
  readonly windows: WindowSpans;
}

/** Returns the plan that a sheet prints: the one in force in a walk, which an amendment may have changed, or the plan itself. */
export function printedPlanOf({ timeline, margin, windows }: Plan, state: WalkState | null): PrintedPlan {
  if (state === null) return { course: timeline?.course ?? null, margin, windows };
  const { inForce, ledger } = state;
  return { course: inForce, margin: inForce && marginOf(inForce), windows: ledger.windows };
}
