export { converted } from "./converted.ts";
export type { System } from "./convertible-units.ts";
export { SYSTEMS } from "./convertible-units.ts";
export type { Figure } from "./in-system.ts";
export { inSystem } from "./in-system.ts";
export type { Limits, Quantity } from "./quantity.ts";
export { limitsOf, measuredAgainst } from "./quantity.ts";
export { isUnitCode, nearestUnitCode } from "./unit-codes.ts";
