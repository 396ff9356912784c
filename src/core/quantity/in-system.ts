import { converted } from "./converted.ts";
import { CONVERTIBLE_UNITS, type System } from "./convertible-units.ts";
import { decimalsOf, type Quantity } from "./quantity.ts";

/** A converted quantity as it is shown. */
export interface Figure {
  /** Rounded to the decimals, or to tens and more where those are none. */
  readonly value: number;
  /** How many decimals it is shown with, whether or not they are zeros. */
  readonly decimals: number;
  /** UCUM code. */
  readonly unit: string;
}

/** What two ways of reckoning one figure may differ by, as a share of it: less is taken for no difference. */
const NOISE = 1e-9;

/** A number in whole steps: to the nearest, or to the side that leaves a limit inside of what it was. */
function inSteps(steps: number, limit: Quantity["limit"]): number {
  const nearest = Math.round(steps);
  if (limit === undefined || Math.abs(steps - nearest) <= NOISE * Math.max(1, Math.abs(steps)))
    return nearest + 0;
  return (limit === "min" ? Math.ceil(steps) : Math.floor(steps)) + 0;
}

/**
 * A quantity in the unit by which a system shows it ([WRD5]), for reading only; `null` where it is of that system already or its unit is
 * not known, so that it is shown as written. The last place shown is the largest power of ten that is no coarser than the last place
 * written (NIST SP 811, B.7: 36 ft is 11.0 m). A minimum is rounded up, a maximum down, everything else to the nearest.
 */
export function inSystem(quantity: Quantity, system: System): Figure | null {
  const { value, unit, limit, isDifference = false } = quantity;
  const target = CONVERTIBLE_UNITS.get(unit)?.shownIn[system] ?? null;
  const exact = target === null ? null : converted(value, unit, target, isDifference);
  const lastPlace = target === null ? null : converted(10 ** -writtenDecimals(quantity), unit, target, true);
  if (target === null || exact === null || lastPlace === null) return null;
  const place = Math.floor(Math.log10(lastPlace) + NOISE);
  const decimals = Math.max(0, -place);
  const steps = place > 0 ? exact / 10 ** place : exact * 10 ** decimals;
  const whole = inSteps(steps, limit);
  return { value: place > 0 ? whole * 10 ** place : whole / 10 ** decimals, decimals, unit: target };
}

const writtenDecimals = ({ value, decimals = 0 }: Quantity): number => Math.max(decimals, decimalsOf(value));
