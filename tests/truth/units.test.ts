import { readFileSync } from "node:fs";
import { ucum } from "@atomic-ehr/ucum";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { CONVERTIBLE_UNITS } from "../../src/core/quantity/convertible-units.ts";
import { converted, inSystem, isUnitCode } from "../../src/core/quantity/index.ts";

const cases = JSON.parse(readFileSync("tests/truth/fixtures/units.json", "utf8"));

/** `4.3 psi` as number and UCUM code. */
function read(text: string): readonly [value: number, code: string] {
  const [value = "", unit = ""] = text.split(" ");
  return [Number(value), unit === "psi" ? "[psi]" : unit === "degF" ? "[degF]" : unit];
}

function expectClose(value: number | null, expected: number, relative: number): void {
  expect(value).not.toBeNull();
  expect(Math.abs((value ?? Number.NaN) - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

describe("conversions against published figures", () => {
  it("[WRD5] exact factors are exact", () => {
    const { data, expected } = cases["unit-exact-factors"];
    for (const [place, text] of data.from.entries()) {
      const [value, from] = read(text);
      expectClose(converted(value, from, data.to[place]), expected[place], 1e-15);
    }
  });

  it("[WRD5] pounds by square inch", () => {
    const { data, expected } = cases["unit-psi"];
    for (const [place, [text, to]] of data.values.entries()) {
      const [value, from] = read(text);
      expectClose(converted(value, from, read(`1 ${to}`)[1]), expected[place], place === 3 ? 1e-8 : 1e-9);
    }
  });

  it("[WRD5] readings of a temperature, and differences", () => {
    const { data, expected } = cases["unit-temperature"];
    for (const [place, [value]] of data.absolute.entries())
      expect(converted(value, "[degF]", "Cel")).toBeCloseTo(expected.celsius[place], 9);
    expect(converted(data.interval[0], "[degF]", "Cel", true)).toBeCloseTo(expected.intervalCelsius, 9);
  });

  it("[WRD5] the rounded figures of NIST SP 811", () => {
    const [feet, pressure] = cases["unit-rounding-nist"].data;
    expect(converted(36, "[ft_i]", "m")).toBeCloseTo(feet.raw, 9);
    expect(inSystem({ value: 36, unit: "[ft_i]" }, "si")).toEqual({ value: 11, decimals: 1, unit: "m" });
    expect(converted(11.8, "atm", "Pa")).toBeCloseTo(pressure.raw, 6);
    // By kPa instead of MPa: the place of 1.20 MPa is tens of kPa.
    expect(inSystem({ value: 11.8, unit: "atm" }, "si")).toEqual({ value: 1200, decimals: 0, unit: "kPa" });
  });

  it("[PRO19] which texts are codes", () => {
    const { data, expected } = cases["ucum-valid"];
    expect(data.map(isUnitCode)).toEqual(expected);
  });

  it("[WRD5] conversions of the functional tests of UCUM, as far as the units are known here", () => {
    const { data, expected } = cases["ucum-convert"];
    const told = (data as [string, string, string][]).flatMap(([value, from, to], place) => {
      const made = converted(Number(value), from, to);
      return made === null ? [] : [[made, expected[place]] as const];
    });
    expect(told).toHaveLength(2);
    for (const [made, published] of told) expectClose(made, published, 1e-12);
  });
});

/** Below these that program refuses: nothing is so cold. */
const COLDEST: Readonly<Record<string, number>> = { K: 0, Cel: -273.15, "[degF]": -459.67 };

describe("conversions against another program", () => {
  const anyPair = fc
    .constantFrom(...CONVERTIBLE_UNITS)
    .chain(([from, { kind }]) =>
      fc.tuple(
        fc.constant(from),
        fc.constantFrom(...[...CONVERTIBLE_UNITS].filter(([, to]) => to.kind === kind).map(([to]) => to)),
      ),
    );

  /** Without those that are too small to have all their digits. */
  const anyValue = fc
    .double({ min: -1e6, max: 1e6, noNaN: true })
    .filter((value) => value === 0 || Math.abs(value) > 1e-9);

  test.prop([anyValue, anyPair])(
    "[WRD5] any value of any unit, into any of its kind",
    (value, [from, to]) => {
      if (value < (COLDEST[from] ?? value)) return;
      const theirs = ucum.convert(value, from, to);
      const ours = converted(value, from, to) ?? Number.NaN;
      // Where two zeros of a scale are taken from one another, figures are as exact as those are large.
      const size = from.match(/Cel|deg|^K$/) ? Math.abs(theirs) + 1000 : Math.abs(theirs);
      expect(Math.abs(ours - theirs), `${value} ${from} in ${to}`).toBeLessThanOrEqual(1e-12 * size);
    },
  );

  it("[PRO19] every unit that is converted is a code there too", () => {
    for (const code of CONVERTIBLE_UNITS.keys()) expect(ucum.validate(code).valid, code).toBe(true);
  });
});
