import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Reading, SupplyPlan } from "../../../src/core/supply/index.ts";
import { limitingSupply, READINGS_FITTED, supplyForecast, turnBack } from "../../../src/core/supply/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { ofSeconds } from "../../../src/core/units/index.ts";

const minutes = (value: number) => ofSeconds(value * 60);
const OXYGEN = { full: 6200, redline: 620, perHour: 600 };
const readings = (...list: readonly (readonly [minute: number, value: number])[]): Reading[] =>
  list.map(([minute, value]) => ({ at: minutes(minute), value }));

describe("the forecast of a supply", () => {
  it("[FOR3] goes by the planned rate from full without a reading, and from the only one", () => {
    expect(supplyForecast(OXYGEN, [], minutes(60))).toEqual({
      basis: "plan",
      perHour: 600,
      level: 5600,
      redlineAt: minutes(558),
      spread: null,
      perHourSpread: null,
      fitted: 0,
      last: null,
      age: null,
    });
    expect(supplyForecast(OXYGEN, readings([60, 5000]), minutes(90))).toMatchObject({
      basis: "plan",
      level: 4700,
      redlineAt: minutes(60 + 438),
      age: minutes(30),
    });
  });

  it("[FOR3] lays a line through two readings or more, in whatever order they come", () => {
    const found = supplyForecast(OXYGEN, readings([60, 5200], [0, 6200], [30, 5700]), minutes(90));
    expect(found).toMatchObject({
      basis: "fit",
      fitted: 3,
      age: minutes(30),
      redlineAt: minutes(334) + 48_000,
    });
    expect(found.redlineAt).toBe(minutes((6200 - 620) / (1000 / 60)));
    expect(found.perHour).toBeCloseTo(1000, 9);
    expect(found.level).toBeCloseTo(4700, 9);
    expect(found.spread).toBeCloseTo(0, 6);
  });

  it("[FOR3] looks at the last readings only, and at none from later on", () => {
    const slow = Array.from({ length: 6 }, (_, index) => [index * 10, 6200 - index] as const);
    const fast = Array.from(
      { length: READINGS_FITTED },
      (_, index) => [100 + index * 10, 6000 - index * 100] as const,
    );
    const later = [300, 6199] as const;
    const found = supplyForecast(OXYGEN, readings(...slow, ...fast, later), minutes(160));
    expect(found.perHour).toBeCloseTo(600, 9);
    expect(found.last).toEqual({ at: minutes(150), value: 5500 });
  });

  it("[FOR3] starts anew after a refill, and takes a small rise for unsteadiness", () => {
    const refilled = readings([0, 3000], [30, 2500], [40, 6000], [60, 5800], [80, 5600]);
    expect(supplyForecast(OXYGEN, refilled, minutes(80))).toMatchObject({ basis: "fit", fitted: 3 });
    expect(supplyForecast(OXYGEN, refilled, minutes(80)).perHour).toBeCloseTo(600, 9);
    const unsteady = readings([0, 6200], [30, 5700], [40, 5720], [60, 5200]);
    expect(supplyForecast(OXYGEN, unsteady, minutes(60)).fitted).toBe(4);
  });

  it("[FOR3] takes no comfort in a gauge that stands still or rises, nor in readings at one time", () => {
    for (const stuck of [
      readings([0, 5000], [30, 5000]),
      readings([0, 4990], [30, 5000]),
      readings([30, 5010], [30, 5000]),
    ]) {
      expect(supplyForecast(OXYGEN, stuck, minutes(30))).toMatchObject({
        basis: "plan",
        redlineAt: minutes(30 + 438),
      });
    }
    expect(supplyForecast({ ...OXYGEN, perHour: 0 }, [], minutes(30)).redlineAt).toBeNull();
  });

  it("[OFF7] takes no rate from readings less than five minutes apart, and says how sure a rate is", () => {
    const close = readings([0, 6200], [4.9, 5000]);
    expect(supplyForecast(OXYGEN, close, minutes(5))).toMatchObject({ basis: "plan", perHour: 600 });
    const apart = supplyForecast(OXYGEN, readings([0, 6200], [5, 6150]), minutes(5));
    expect(apart).toMatchObject({ basis: "fit", fitted: 2, perHourSpread: null });
    expect(apart.perHour).toBeCloseTo(600, 9);
    const refilled = readings([0, 3000], [30, 2500], [40, 6000], [43, 5000]);
    expect(supplyForecast(OXYGEN, refilled, minutes(43)).basis).toBe("plan");
    // Through (0, 10), (1, 7), (2, 7): slope −1.5, residuals ½, −1, ½; s² = 1.5, the slope's error √(1.5 / 2).
    const three = supplyForecast(
      { full: 10, redline: 0, perHour: 1 },
      readings([0, 10], [60, 7], [120, 7]),
      minutes(120),
    );
    expect(three.perHour).toBeCloseTo(1.5, 9);
    expect(three.perHourSpread).toBeCloseTo(Math.sqrt(1.5 / 2), 9);
  });

  it("[FOR3] counts a reading at the redline as the redline met, whatever the line says", () => {
    const found = supplyForecast(OXYGEN, readings([0, 6200], [30, 2500], [60, 620], [90, 600]), minutes(100));
    expect(found.redlineAt).toBeLessThanOrEqual(minutes(90));
    expect(supplyForecast(OXYGEN, readings([50, 600]), minutes(60)).redlineAt).toBeLessThanOrEqual(
      minutes(50),
    );
    expect(supplyForecast({ ...OXYGEN, perHour: 0 }, readings([50, 620]), minutes(60)).redlineAt).toBe(
      minutes(50),
    );
  });

  const anyReading = fc.record({
    at: fc.integer({ min: -1e7, max: 1e8 }).map((at) => at as Duration),
    value: fc.oneof(fc.double(), fc.double({ min: 0, max: 7000, noNaN: true })),
  });
  const anyPlan = fc.record({
    full: fc.double({ noNaN: true, noDefaultInfinity: true }),
    redline: fc.double({ noNaN: true, noDefaultInfinity: true }),
    perHour: fc.double({ min: 0, max: 1e308, noNaN: true }),
  });
  const tooLarge: [SupplyPlan, Reading[], number] = [
    { full: 0, redline: 0, perHour: 0 },
    [-8, 4, 19, 5].map((at, place) => ({
      at: at as Duration,
      value: place === 0 ? 1.3828408729710123e307 : 0,
    })),
    19,
  ];
  const given = [anyPlan, fc.array(anyReading, { maxLength: 12 }), fc.integer({ min: 0, max: 1e8 })] as const;
  test.prop([...given], { examples: [tooLarge] })(
    "[FOR3] is never NaN, and its time is always whole milliseconds",
    (plan, list, now) => {
      const found = supplyForecast(plan, list, now as Duration);
      for (const value of Object.values(found)) expect(value).not.toBeNaN();
      expect(found.perHour).toBeGreaterThanOrEqual(0);
      if (found.redlineAt !== null) expect(Number.isSafeInteger(found.redlineAt)).toBe(true);
      if (found.age !== null) expect(found.age).toBeGreaterThanOrEqual(0);
    },
  );

  test.prop([
    fc.integer({ min: 10, max: 2000 }),
    fc
      .uniqueArray(fc.integer({ min: 0, max: 300 }), { minLength: 2, maxLength: 6 })
      .filter((times) => Math.max(...times) - Math.min(...times) >= 5),
  ])("[FOR3] finds the redline of readings that lie on a line", (perHour, times) => {
    const list = readings(...times.map((minute) => [minute, 6200 - (perHour * minute) / 60] as const));
    const found = supplyForecast(OXYGEN, list, minutes(300));
    const exact = ((6200 - 620) / perHour) * 3_600_000;
    expect(Math.abs((found.redlineAt ?? Number.NaN) - exact)).toBeLessThanOrEqual(2);
  });
});

describe("the turn-back time", () => {
  const supply = (id: string, value: number) => ({
    id,
    forecast: supplyForecast(OXYGEN, readings([0, value]), minutes(0)),
  });

  it("[FOR3] goes by the supply whose redline is met first", () => {
    const first = limitingSupply([supply("a", 3000), supply("b", 2000), supply("c", 2000)]);
    expect(first).toMatchObject({ id: "b", redlineAt: minutes(138) });
    expect(limitingSupply([])).toBeNull();
    const never = { forecast: supplyForecast({ ...OXYGEN, perHour: 0 }, [], minutes(0)) };
    expect(limitingSupply([never])).toBeNull();
  });

  it("[FOR3] is the redline or the limit, whichever is first, minus the return", () => {
    expect(turnBack(minutes(300), minutes(390), minutes(40))).toEqual({
      at: minutes(260),
      because: "supply",
    });
    expect(turnBack(minutes(400), minutes(390), minutes(40))).toEqual({ at: minutes(350), because: "limit" });
    expect(turnBack(minutes(390), minutes(390), minutes(40))?.because).toBe("limit");
    expect(turnBack(minutes(300), null, minutes(40))?.because).toBe("supply");
    expect(turnBack(null, null, minutes(40))).toBeNull();
  });
});
