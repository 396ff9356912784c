import type { Quantity } from "../core/quantity/index.ts";

/** What lies from one quantity to another of the same unit. */
export interface QuantityRange {
  readonly least: Quantity;
  readonly most: Quantity;
}
