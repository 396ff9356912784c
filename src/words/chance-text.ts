import type { Rounding } from "../core/units/index.ts";

/**
 * A share of samples, from 0 to 1, in whole per cent, as every screen and the command line say it ([OFF8]). Samples
 * cannot tell the last per cent from certainty, so that it is `> 99 %` or `< 1 %` there. A chance of what is wished for
 * is rounded down, a chance of harm up.
 */
export function chanceText(share: number, rounding: Rounding): string {
  if (share > 0.99) return "> 99 %";
  if (share < 0.01) return "< 1 %";
  // A share such as 0.29 is no exact binary fraction: what is off by less than a billionth is the whole number.
  const percent = Number((share * 100).toFixed(7));
  return `${rounding === "up" ? Math.ceil(percent) : Math.floor(percent)} %`;
}
