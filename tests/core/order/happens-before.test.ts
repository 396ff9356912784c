import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { HappensBefore } from "../../../src/core/order/index.ts";
import { happensBefore, networkOf } from "../../../src/core/order/index.ts";
import { AS_EXPECTED, activityOf } from "../../../src/core/procedure/index.ts";
import { outlineFrom, step } from "../procedure-builder.ts";

type Steps = Parameters<typeof outlineFrom>[0];

const orderOf = (steps: Steps): HappensBefore => {
  const outline = outlineFrom(steps);
  return happensBefore(networkOf(outline, activityOf(outline, AS_EXPECTED, true)));
};

describe("happens-before", () => {
  it("[ORD2] goes through lanes, joint steps and `after`", () => {
    const order = orderOf([
      step("a", "ev1", 1),
      step("b", "ev2", 1),
      step("both", ["ev1", "ev2"], 1),
      step("c", "iv", 1),
      step("d", "iv", 1, { after: ["b"] }),
    ]);
    expect(order.before(0, 2)).toBe(true);
    expect(order.before(1, 2)).toBe(true);
    expect(order.before(2, 0)).toBe(false);
    expect(order.before(1, 4)).toBe(true);
    expect(order.concurrent(0, 1)).toBe(true);
    expect(order.concurrent(2, 4)).toBe(true);
    expect(order.concurrent(3, 4)).toBe(false);
    expect(order.concurrent(0, 0)).toBe(false);
    expect(order.before(0, 0)).toBe(false);
    expect(order.clock(2)).toEqual([2, 2, 0]);
    expect(order.clock(4)).toEqual([0, 1, 2]);
  });

  it("[ORD2] knows nothing of inactive steps and of steps in or behind a deadlock", () => {
    const order = orderOf([
      step("ask", "iv", 1, { decide: { id: "x", ask: "?", outcomes: ["y", "n"], expect: "y" } }),
      step("branch", "iv", 1, { when: { x: "n" } }),
      step("a", "ev1", 1, { after: ["b"] }),
      step("b", "ev2", 1, { after: ["a"] }),
      step("c", "ev2", 1),
    ]);
    for (const index of [1, 2, 3, 4]) {
      expect(order.clock(index)).toBeNull();
      expect(order.before(0, index)).toBe(false);
      expect(order.concurrent(0, index)).toBe(false);
    }
  });

  const crew = ["ev1", "ev2", "iv"] as const;
  const drawnSteps = fc.array(
    fc.record({
      by: fc.subarray([...crew], { minLength: 1 }),
      after: fc.array(fc.nat({ max: 11 }), { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 12 },
  );
  test.prop([drawnSteps])("[ORD2] is the transitive closure of the links", (drawn) => {
    const order = orderOf(
      drawn.map(({ by, after }, index) =>
        step(`s${index}`, by, 1, {
          after: [...new Set(after)]
            .filter((other) => other < drawn.length && other !== index)
            .map((other) => `s${other}`),
        }),
      ),
    );
    const { before, order: ordered } = order.network;
    const reach = drawn.map(() => drawn.map(() => false));
    for (const index of ordered) {
      for (const { from } of before[index] ?? []) {
        const row = reach[index];
        if (!row) continue;
        row[from] = true;
        for (const [other, isBefore] of (reach[from] ?? []).entries()) if (isBefore) row[other] = true;
      }
    }
    for (const a of drawn.keys()) {
      for (const b of drawn.keys()) {
        expect(order.before(a, b)).toBe(reach[b]?.[a]);
        const isKnown = ordered.includes(a) && ordered.includes(b);
        expect(order.concurrent(a, b)).toBe(isKnown && a !== b && !reach[b]?.[a] && !reach[a]?.[b]);
      }
    }
  });
});
