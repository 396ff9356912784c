import { describe, expect, it } from "vitest";
import { planOf } from "../../src/core/plan/index.ts";
import { energyOf, gasFor, kcalPerHourOf, supplyForecast, turnBack } from "../../src/core/supply/index.ts";
import { hourMinuteText, inMinutes, minus, NO_TIME, ofSeconds } from "../../src/core/units/index.ts";
import { outlineFrom, step } from "../core/procedure-builder.ts";
import values from "./fixtures/supply.json" with { type: "json" };

const minutes = (value: number) => ofSeconds(value * 60);

describe("supplies, against values from outside", () => {
  for (const gauge of values.gauges) {
    it(`[FOR3] ${gauge.id}: rate, fitted level, spread and time left`, () => {
      const list = gauge.minutes.map((minute, index) => ({
        at: minutes(minute),
        value: gauge.levels[index] ?? Number.NaN,
      }));
      const now = list.at(-1)?.at ?? NO_TIME;
      const plan = { full: gauge.levels[0] ?? Number.NaN, redline: gauge.floor, perHour: 0 };
      const found = supplyForecast(plan, list, now);
      expect(-found.perHour / 60).toBeCloseTo(gauge.perMinute, 4);
      expect(inMinutes(minus(found.redlineAt ?? NO_TIME, now))).toBeCloseTo(gauge.remainingMinutes, 0);
      if (gauge.atLast !== null) expect(found.level).toBeCloseTo(gauge.atLast, 6);
      if (gauge.spread !== null) expect(found.spread).toBeCloseTo(gauge.spread, 4);
      if (gauge.atStart !== null) {
        expect(found.level + (found.perHour / 60) * inMinutes(now)).toBeCloseTo(gauge.atStart, 6);
      }
      // Turning back leaves the time of the way home before the redline.
      expect(turnBack(found.redlineAt, null, minutes(40))?.at).toBe(
        minus(found.redlineAt ?? NO_TIME, minutes(40)),
      );
    });
  }

  for (const { id, oxygenLitres, carbonDioxideLitres, kcal } of values.weir) {
    it(`[FOR3] ${id}: energy from gas`, () => {
      expect(energyOf(oxygenLitres, carbonDioxideLitres)).toBeCloseTo(kcal, 4);
    });
  }

  it("[FOR3] energy of a litre of oxygen by respiratory quotient, and watts in kcal/h", () => {
    for (const { quotient, kcal } of values.kcalPerLitreOxygen)
      expect(energyOf(1, quotient)).toBeCloseTo(kcal, 4);
    for (const { watts, kcalPerHour } of values.watts)
      expect(kcalPerHourOf(watts)).toBeCloseTo(kcalPerHour, 1);
  });

  for (const expected of values.gas) {
    it(`[FOR3] ${expected.id}: gas for a rate`, () => {
      const gas = gasFor(expected.kcalPerHour, expected.quotient);
      expect(gas?.oxygenLitres).toBeCloseTo(expected.oxygenLitres, 2);
      if (expected.carbonDioxideLitres !== null) {
        expect(gas?.carbonDioxideLitres).toBeCloseTo(expected.carbonDioxideLitres, 2);
      }
      expect(gas?.oxygenGrams).toBeCloseTo(expected.oxygenGrams, 2);
      expect(gas?.carbonDioxideGrams).toBeCloseTo(expected.carbonDioxideGrams, 1);
    });
  }

  for (const { id, minutes: lengths, sum } of values.petSums) {
    it(`[PLN1] ${id}: steps one after the other add up to the PET stated`, () => {
      const outline = outlineFrom(lengths.map((length, index) => step(`s${index}`, "ev1", length)));
      expect(hourMinuteText(planOf(outline).timeline?.course.finish ?? NO_TIME)).toBe(sum);
    });
  }
});
