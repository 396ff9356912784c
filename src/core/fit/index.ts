export type { FitCase } from "./fit-case.ts";
export { planCase, walkCase } from "./fit-case.ts";
export type { Fit, FitOptions, FittedSet } from "./fit-of.ts";
export { fitOf } from "./fit-of.ts";
