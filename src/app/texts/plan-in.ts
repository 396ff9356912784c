import type { Plan } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";

/** The same plan with the texts of another outline, which has the same steps and times. */
export function planIn(plan: Plan, outline: Outline): Plan {
  if (plan.outline === outline) return plan;
  const { timeline } = plan;
  return {
    ...plan,
    outline,
    timeline: timeline && { ...timeline, course: { ...timeline.course, outline } },
  };
}
