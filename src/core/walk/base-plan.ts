import type { Plan } from "../plan/index.ts";
import { lightFrom, planOf } from "../plan/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import type { Ledger, OpenedWalk } from "./ledger.ts";

const known = new WeakMap<Outline, Map<Instant | null, Plan>>();

/**
 * Returns the plan of record, which is the baseline for a walk. It plans the procedure as it was opened, with every
 * decision as expected. It starts at the planned start, or at the actual start when none was planned.
 */
export function basePlanOf({ opened, petZero }: Pick<Ledger, "opened" | "petZero">): Plan {
  const { outline } = opened.procedure;
  const start = opened.plannedStart ?? petZero;
  const plans = known.get(outline) ?? new Map<Instant | null, Plan>();
  known.set(outline, plans);
  const plan = plans.get(start) ?? planFrom(opened, start);
  plans.set(start, plan);
  return plan;
}

function planFrom({ procedure: { outline }, light }: OpenedWalk, start: Instant | null): Plan {
  return planOf(outline, { start, light: light && start !== null ? lightFrom(light, start) : null });
}
