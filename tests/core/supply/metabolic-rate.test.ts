import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { energyOf, gasFor } from "../../../src/core/supply/index.ts";

describe("metabolic rate", () => {
  test.prop([fc.double({ min: 0, max: 1e4, noNaN: true }), fc.double({ min: 0.5, max: 1.3, noNaN: true })])(
    "[FOR3] the gas for a rate gives that rate again",
    (rate, quotient) => {
      const gas = gasFor(rate, quotient);
      expect(energyOf(gas?.oxygenLitres ?? Number.NaN, gas?.carbonDioxideLitres ?? Number.NaN)).toBeCloseTo(
        rate,
        6,
      );
    },
  );

  it("[FOR3] is not made up for rates and quotients that cannot be", () => {
    for (const [rate, quotient] of [
      [-1, 0.85],
      [250, 0],
      [Number.NaN, 0.85],
      [250, Number.NaN],
      [Number.POSITIVE_INFINITY, 0.85],
    ] as const) {
      expect(gasFor(rate, quotient)).toBeNull();
    }
  });
});
