/** A value with its unit, as an author or somebody at a gauge wrote it. */
export interface Quantity {
  readonly value: number;
  /** UCUM code; `1` for a plain number. */
  readonly unit: string;
  /** Decimals that a converted figure must keep apart where they are more than those of the value: those of what it is held against. */
  readonly decimals?: number;
  /** Which limit it is, so that it is rounded inward where it is converted; missing for what is no limit. */
  readonly limit?: "min" | "max";
  /** True for a rate or a difference, to which the zero of a scale does not matter: 18 degrees of Fahrenheit are 10 of Celsius. */
  readonly isDifference?: boolean;
}

/** The limits of what is recorded, in one unit. */
export interface Limits {
  readonly unit: string;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

/** The decimals that a number is written with: 1 for 4.3, none for 30. */
export function decimalsOf(value: number): number {
  const [digits = "", exponent = "0"] = String(value).split("e");
  return Math.max(0, (digits.split(".")[1]?.length ?? 0) - Number(exponent));
}

const finestOf = (...values: readonly (number | undefined)[]): number =>
  Math.max(...values.map((value) => (value === undefined ? 0 : decimalsOf(value))));

/**
 * The limits as quantities, `null` where there is none; with the decimals of the finer one, so that they never cross when they are
 * converted. Limits that are one figure are that figure, with no side to be rounded to.
 */
export function limitsOf({ unit, min, max }: Limits): Record<"min" | "max", Quantity | null> {
  const decimals = finestOf(min, max);
  const limit = (which: "min" | "max", value: number | undefined): Quantity | null => {
    if (value === undefined) return null;
    return min === max ? { value, unit } : { value, unit, decimals, limit: which };
  };
  return { min: limit("min", min), max: limit("max", max) };
}

/** What was taken as a quantity, with decimals as fine as those of its limits, so that it never looks within them when it is not. */
export function measuredAgainst({ unit, min, max }: Limits, value: number): Quantity {
  return { value, unit, decimals: finestOf(min, max, value) };
}
