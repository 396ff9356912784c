export type { ContingencyEffect } from "./contingency-effect.ts";
export { contingencyEffect } from "./contingency-effect.ts";
export type { Effect, EffectOptions, Sides, StepEffect } from "./effect-of.ts";
export { effectOf } from "./effect-of.ts";
export type { FindingsEffect } from "./findings-effect.ts";
export { findingsEffect } from "./findings-effect.ts";
