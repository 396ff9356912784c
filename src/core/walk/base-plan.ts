import type { Course } from "../course/index.ts";
import type { Plan } from "../plan/index.ts";
import { lightFrom, planOf } from "../plan/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import type { Ledger, OpenedWalk } from "./ledger.ts";

const known = new WeakMap<Outline, Map<Instant | null, Plan>>();

/**
 * Returns the plan of record, with which the review compares a walk. It plans the procedure as it was opened, with every
 * decision as expected. It starts at the planned start, or at the actual start when none was planned.
 */
export function basePlanOf(ledger: Pick<Ledger, "opened" | "petZero">): Plan {
  return startPlanOf(ledger, ledger.opened.procedure.outline);
}

/**
 * Returns the plan in force, against which it is told how far a lane is behind ([AMD2]): what the last amendment left to do,
 * planned from the state at its time. Until the plan is amended, and for amendments before the clock was started, it is
 * the plan of the procedure in force from PET 0. `null` when there is no plan.
 */
export function planInForce(ledger: Ledger): Course | null {
  const last = ledger.amendments.at(-1);
  if (last && last.pet !== null) return last.replanned.after;
  return planFromStart(ledger).timeline?.course ?? null;
}

/** Returns the plan of the procedure in force from PET 0, as if nothing had happened yet. */
export function planFromStart(ledger: Pick<Ledger, "opened" | "petZero" | "inForce">): Plan {
  return startPlanOf(ledger, ledger.inForce.outline);
}

function startPlanOf({ opened, petZero }: Pick<Ledger, "opened" | "petZero">, outline: Outline): Plan {
  const start = opened.plannedStart ?? petZero;
  const plans = known.get(outline) ?? new Map<Instant | null, Plan>();
  known.set(outline, plans);
  const plan = plans.get(start) ?? planFrom(outline, opened, start);
  plans.set(start, plan);
  return plan;
}

function planFrom(outline: Outline, { light }: OpenedWalk, start: Instant | null): Plan {
  return planOf(outline, { start, light: light && start !== null ? lightFrom(light, start) : null });
}
