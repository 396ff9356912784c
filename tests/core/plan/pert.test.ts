import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { pertSampler, seededSource } from "../../../src/core/plan/index.ts";
import type { StepTime } from "../../../src/core/procedure/index.ts";
import { ofSeconds } from "../../../src/core/units/index.ts";

const time = (low: number, likely: number, high: number): StepTime => ({
  low: ofSeconds(low),
  likely: ofSeconds(likely),
  high: ofSeconds(high),
});

describe("sampled durations", () => {
  it("[PLN5] are the same for the same seed, and others for another", () => {
    const draw = (seed: number) => {
      const sample = pertSampler(seededSource(seed));
      return Array.from({ length: 20 }, () => sample(time(60, 90, 300)));
    };
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  test.prop([fc.nat(), fc.nat({ max: 500 }), fc.nat({ max: 500 }), fc.nat({ max: 500 })])(
    "[PLN5] are whole milliseconds between low and high",
    (seed, low, more, most) => {
      const drawn = pertSampler(seededSource(seed))(time(low, low + more, low + more + most));
      expect(Number.isInteger(drawn)).toBe(true);
      expect(drawn).toBeGreaterThanOrEqual(low * 1000);
      expect(drawn).toBeLessThanOrEqual((low + more + most) * 1000);
    },
  );

  it("[PLN5] have the mean (low + 4 likely + high)/6 and the spread of the distribution", () => {
    const sample = pertSampler(seededSource(1));
    const drawn = Array.from({ length: 40_000 }, () => sample(time(60, 120, 300)) / 1000);
    const mean = drawn.reduce((sum, one) => sum + one, 0) / drawn.length;
    const sd = Math.sqrt(drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / drawn.length);
    // Of a beta with shapes a and b scaled to [low, high]: sd = width √(ab/((a+b)²(a+b+1))).
    const [a, b, width] = [1 + (4 * 60) / 240, 1 + (4 * 180) / 240, 240];
    const expectedSd = width * Math.sqrt((a * b) / ((a + b) ** 2 * (a + b + 1)));
    // Four standard errors of 40,000 draws.
    expect(Math.abs(mean - 140)).toBeLessThan((4 * expectedSd) / 200);
    expect(Math.abs(sd / expectedSd - 1)).toBeLessThan(0.02);
  });
});
