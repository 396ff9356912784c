import type { Plan } from "../plan/index.ts";
import { lightFrom, planOf } from "../plan/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import type { Ledger, Opened } from "./ledger.ts";

const known = new WeakMap<Outline, Map<Instant | null, Plan>>();

/** The plan a walk is compared with: decisions as expected, from the planned start, or from the real one when none was planned. */
export function basePlanOf({ opened, petZero }: Ledger): Plan {
  const start = opened.plannedStart ?? petZero;
  const plans = known.get(opened.outline) ?? new Map<Instant | null, Plan>();
  known.set(opened.outline, plans);
  const plan = plans.get(start) ?? planFrom(opened, start);
  plans.set(start, plan);
  return plan;
}

function planFrom({ outline, light }: Opened, start: Instant | null): Plan {
  return planOf(outline, { start, light: light && start !== null ? lightFrom(light, start) : null });
}
