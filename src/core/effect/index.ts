export type {
  AmendmentEffect,
  AmendmentEffectOptions,
  JudgedAmendment,
  SupplyEffect,
  WindowEffect,
} from "./amendment-effect.ts";
export { amendmentEffect } from "./amendment-effect-of.ts";
export type { BroughtContingency } from "./back-to-plan-changes.ts";
export { backToPlanChanges, broughtContingencies } from "./back-to-plan-changes.ts";
export type { Bringing } from "./bring-changes.ts";
export { bringChanges } from "./bring-changes.ts";
export type { ContingencyEffect } from "./contingency-effect.ts";
export { contingencyEffect } from "./contingency-effect.ts";
export type { Effect, EffectOptions, StepEffect } from "./effect-of.ts";
export { effectOf } from "./effect-of.ts";
export type { FindingsEffect } from "./findings-effect.ts";
export { findingsEffect } from "./findings-effect.ts";
export type { Sides } from "./sides.ts";
