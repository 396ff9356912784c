import { range } from "d3-array";
import type { Watch } from "../../core/procedure/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import type { PrintedPlan } from "./printed-plan.ts";

/**
 * The PETs at which a watch is due by the plan: every `every` from the finish of its first step (or PET 0) up to, not
 * including, the start of its last step (or the plan's finish). Empty without a plan.
 */
export function watchDue({ course }: PrintedPlan, watch: Watch): Duration[] {
  if (!course || watch.every <= 0) return [];
  const planned = (id: StepId | undefined) => (id === undefined ? null : (course.steps.get(id) ?? null));
  const from = planned(watch.from)?.finish ?? 0;
  const until = planned(watch.until)?.start ?? course.finish;
  return range(from + watch.every, until, watch.every) as Duration[];
}
