export type { RandomSource } from "./pert.ts";
export { pertSampler, seededSource } from "./pert.ts";
export type { Plan, PlanOptions } from "./plan.ts";
export { planOf, planProcedure } from "./plan.ts";
export type { PlannedStep, Timeline, Wait, WaitOn } from "./timeline.ts";
export type { Fit, Span, WindowSpans } from "./windows.ts";
export { earliestFit, windowSpansOf } from "./windows.ts";
