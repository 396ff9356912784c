import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { CONVERTIBLE_UNITS } from "../../../src/core/quantity/convertible-units.ts";
import type { Quantity } from "../../../src/core/quantity/index.ts";
import {
  converted,
  inSystem,
  isUnitCode,
  limitsOf,
  measuredAgainst,
  SYSTEMS,
} from "../../../src/core/quantity/index.ts";

const CODES = [...CONVERTIBLE_UNITS.keys()];
const anyCode = fc.constantFrom(...CODES);
/** A figure as people write one: up to five digits, up to three of them decimals. */
const anyFigure = fc
  .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 0, max: 3 }))
  .map(([digits, decimals]) => digits / 10 ** decimals + 0);
const anySystem = fc.constantFrom(...SYSTEMS);
const shown = (quantity: Quantity, system: "si" | "us") => {
  const figure = inSystem(quantity, system);
  return figure && `${figure.value.toFixed(figure.decimals)} ${figure.unit}`;
};

describe("a quantity in the units of a system", () => {
  it.each([
    [4.3, "[psi]", "si", "29.6 kPa"],
    [29.6, "kPa", "us", "4.29 [psi]"],
    [36, "[ft_i]", "si", "11.0 m"],
    [6, "m", "us", "20 [ft_i]"],
    [25, "N.m", "us", "18.4 [ft_i].[lbf_av]"],
    [7, "atm", "si", "700 kPa"],
    [75, "[degF]", "si", "23.9 Cel"],
    [-40, "Cel", "us", "-40 [degF]"],
    [0, "kPa", "us", "0.0 [psi]"],
    [0.5, "L/min", "us", "0.018 [cft_i]/min"],
    [300, "W", "us", "1024 [Btu_IT]/h"],
  ] as const)(
    "[WRD5] %d %s in %s: as many digits as were written, or one more",
    (value, unit, system, text) => {
      expect(shown({ value, unit }, system)).toBe(text);
    },
  );

  it("[WRD5] a limit is rounded inward: a maximum down, a minimum up, to the very figure where it is one", () => {
    expect(shown({ value: 4.3, unit: "[psi]", limit: "max" }, "si")).toBe("29.6 kPa");
    expect(shown({ value: 4.3, unit: "[psi]", limit: "min" }, "si")).toBe("29.7 kPa");
    expect(shown({ value: 32, unit: "[degF]", limit: "max" }, "si")).toBe("0.0 Cel");
    expect(shown({ value: 10, unit: "[in_i]", limit: "min" }, "si")).toBe("260 mm");
    expect(shown({ value: 25.4, unit: "mm", limit: "max" }, "us")).toBe("1.000 [in_i]");
  });

  it("[WRD5] a rate has no zero of its own: 18 degrees of Fahrenheit are 10 of Celsius", () => {
    expect(shown({ value: 18, unit: "[degF]", isDifference: true }, "si")).toBe("10.0 Cel");
  });

  it.each(["1", "deg", "%", "foo", "kPa{gauge}", "[mi_us]", "Pa.s", "constructor", ""])(
    "[WRD5] %s is not known here, and stays as written in both systems",
    (unit) => {
      expect(SYSTEMS.map((system) => inSystem({ value: 4, unit }, system))).toEqual([null, null]);
      expect(converted(4, unit, unit)).toBeNull();
    },
  );

  it("[WRD5] units of two kinds are not converted into one another, though their dimensions be the same", () => {
    expect(converted(1, "N.m", "J")).toBeNull();
    expect(converted(1, "kPa", "[ft_i]")).toBeNull();
  });

  it("[PRO19] every unit that is converted is a UCUM code, and so is what it is shown by, which is of its kind", () => {
    for (const [code, { kind, shownIn }] of CONVERTIBLE_UNITS) {
      expect(isUnitCode(code), code).toBe(true);
      for (const system of SYSTEMS) {
        const target = shownIn[system];
        if (target === null) continue;
        expect(isUnitCode(target), target).toBe(true);
        expect(CONVERTIBLE_UNITS.get(target)?.kind, `${code} by ${target}`).toBe(kind);
        expect(CONVERTIBLE_UNITS.get(target)?.shownIn[system], `${target} is of ${system}`).toBeNull();
      }
    }
  });

  test.prop([anyFigure, anyCode, anySystem])(
    "[WRD5] a figure is never coarser than it was written, and less than ten times finer",
    (value, unit, system) => {
      const figure = inSystem({ value, unit }, system);
      if (!figure) return;
      const back = converted(figure.value, figure.unit, unit) ?? Number.NaN;
      const decimals = String(value).split(".")[1]?.length ?? 0;
      expect(Math.abs(back - value)).toBeLessThanOrEqual((10 ** -decimals / 2) * (1 + 1e-6));
      const place = figure.decimals > 0 ? 10 ** -figure.decimals : 1;
      const written = converted(10 ** -decimals, unit, figure.unit, true) ?? 0;
      if (figure.decimals > 0) expect(place * 10).toBeGreaterThan(written * (1 - 1e-6));
    },
  );

  test.prop([anyFigure, anyCode, anySystem, fc.constantFrom("min", "max")])(
    "[WRD5] a converted limit is never beyond the one that was written",
    (value, unit, system, limit) => {
      const figure = inSystem({ value, unit, limit }, system);
      if (!figure) return;
      const exact = converted(value, unit, figure.unit) ?? Number.NaN;
      const beyond = limit === "min" ? exact - figure.value : figure.value - exact;
      expect(beyond).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(exact)));
    },
  );

  test.prop([anyFigure, anyFigure, anyFigure, anyCode, anySystem])(
    "[WRD5] what is outside its limits never looks within them, and limits never cross",
    (one, other, value, unit, system) => {
      const limits = { unit, min: Math.min(one, other), max: Math.max(one, other) };
      const { min, max } = limitsOf(limits);
      const [least, most] = [min && inSystem(min, system), max && inSystem(max, system)];
      const taken = inSystem(measuredAgainst(limits, value), system);
      if (!least || !most || !taken) return;
      expect(least.value).toBeLessThanOrEqual(most.value);
      const slack = 1e-7 * Math.max(1, Math.abs(taken.value));
      if (value > limits.max) expect(taken.value).toBeGreaterThan(most.value - slack);
      if (value < limits.min) expect(taken.value).toBeLessThan(least.value + slack);
      if (value > limits.max && one !== other) expect(taken.value).not.toBe(most.value);
      if (value < limits.min && one !== other) expect(taken.value).not.toBe(least.value);
    },
  );
});
