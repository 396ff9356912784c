import { describe, expect, it } from "vitest";
import { mean } from "../../../src/core/statistics/index.ts";
import { bandsOf, isHeld, madeUpSteps } from "./made-up-steps.ts";

const STEPS = 1000;

describe("bands of made-up steps", () => {
  it.each([0, 1, 3, 8])("[LRN2] hold the next walk in eight of ten after %s walks", (walks) => {
    const steps = madeUpSteps(STEPS, walks, 11);
    const held = steps.filter((step) => isHeld(step, bandsOf(step).learned)).length / STEPS;
    // Three standard errors of a share of 0.8 in a thousand.
    expect(Math.abs(held - 0.8)).toBeLessThan(3 * Math.sqrt((0.8 * 0.2) / STEPS));
  });

  it("[LRN2] are nearer to the next walk than the planner's figures, and than the plain average of few walks", () => {
    const off = (walks: number, by: "learned" | "planned" | "average") =>
      mean(
        madeUpSteps(STEPS, walks, 11).map((step) => Math.abs(Math.log(step.next / bandsOf(step)[by].p50))),
      );
    expect(off(3, "learned")).toBeLessThan(off(3, "planned"));
    expect(off(2, "learned")).toBeLessThan(off(2, "average"));
  });
});
