import { CONVERTIBLE_UNITS } from "./convertible-units.ts";

/**
 * A value in another unit of the same kind, not rounded; `null` where one of the units is not known or they are of two kinds. Of a
 * temperature the value is a reading on its scale, unless `isDifference`. Factors are those of NIST SP 811 (2008), by UCUM code.
 */
export function converted(value: number, from: string, to: string, isDifference = false): number | null {
  const [source, target] = [CONVERTIBLE_UNITS.get(from), CONVERTIBLE_UNITS.get(to)];
  if (!source || !target || source.kind !== target.kind) return null;
  const scaled = (value * source.factor) / target.factor;
  return isDifference ? scaled : scaled + (source.zero - target.zero) / target.factor;
}
