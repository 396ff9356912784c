import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { deadlockFinding, networkOf } from "../../../src/core/order/index.ts";
import { AS_EXPECTED, activityOf, type Outline } from "../../../src/core/procedure/index.ts";
import { outlineFrom, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

const network = (outline: Outline) => networkOf(outline, activityOf(outline, AS_EXPECTED, true));

describe("a network", () => {
  it("[ORD1] connects neighbours in a lane, and what `after` names, with its lag", () => {
    const outline = outlineFrom([
      step("a", "ev1", 1),
      step("b", "ev2", 1),
      step("c", ["ev1", "ev2"], 1),
      step("d", "iv", 1, { after: ["a", { step: "c", lag: "PT2M" }] }),
    ]);
    expect(network(outline).before).toEqual([
      [],
      [],
      [
        { from: 0, to: 2, lag: 0, because: "lane" },
        { from: 1, to: 2, lag: 0, because: "lane" },
      ],
      [
        { from: 0, to: 3, lag: 0, because: "after" },
        { from: 2, to: 3, lag: 120_000, because: "after" },
      ],
    ]);
  });

  it("[ORD1] keeps a lag between neighbours of a lane", () => {
    const outline = outlineFrom([
      step("a", "ev1", 1),
      step("b", "ev1", 1, { after: [{ step: "a", lag: "PT3M" }] }),
    ]);
    expect(network(outline).before[1]).toContainEqual({ from: 0, to: 1, lag: 180_000, because: "after" });
  });

  it("[PRO4] takes an `after` that names an inactive step as met, and links its lane past it", () => {
    const outline = outlineFrom([
      step("ask", "ev1", 1, { decide: { id: "x", ask: "?", outcomes: ["y", "n"], expect: "y" } }),
      step("branch", "ev1", 1, { when: { x: "n" } }),
      step("end", "ev1", 1),
      step("other", "ev2", 1, { after: ["branch"] }),
    ]);
    const { before, order } = network(outline);
    expect(before[3]).toEqual([]);
    expect(before[2]).toEqual([{ from: 0, to: 2, lag: 0, because: "lane" }]);
    expect(order).toEqual([0, 2, 3]);
  });

  it("[PRO3] follows an `after` that points forwards in reading order", () => {
    const outline = outlineFrom([step("late", "ev1", 1, { after: ["early"] }), step("early", "ev2", 1)]);
    expect(network(outline).order).toEqual([1, 0]);
    expect(deadlockFinding(network(outline))).toBeNull();
  });

  it("[ORD1] finds a deadlock and names the steps round it and whom each waits on", () => {
    const outline = outlineFrom([
      step("before", "ev1", 1),
      step("a", "ev1", 1, { after: ["d"] }),
      step("b", "ev1", 1),
      step("c", "ev2", 1, { after: ["b"] }),
      step("d", "ev2", 1),
      step("behind", "ev2", 1),
    ]);
    const found = deadlockFinding(network(outline));
    expect(found).toMatchObject({ level: "error", code: "order/deadlock", steps: ["a", "b", "c", "d"] });
    expect(said(found ?? undefined)).toContain('"a" (EV1) waits on "d", done by EV2');
    expect(said(found ?? undefined)).toContain('"b" (EV1) waits on "a", which stands before it in the lane');
    expect(said(found ?? undefined)).toContain('"c" (EV2) waits on "b", done by EV1');
    expect(said(found ?? undefined)).not.toContain('"before"');
    expect(said(found ?? undefined)).not.toContain('"behind"');
  });

  const crew = ["ev1", "ev2", "iv"] as const;
  const anySteps = fc.array(
    fc.record({
      by: fc.subarray([...crew], { minLength: 1 }),
      after: fc.array(fc.nat({ max: 14 }), { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 15 },
  );
  test.prop([anySteps])(
    "[ORD1] either puts every step behind its predecessors, or has a ring that really goes round",
    (drawn) => {
      const outline = outlineFrom(
        drawn.map(({ by, after }, index) =>
          step(`s${index}`, by, 1, {
            after: [...new Set(after)]
              .filter((other) => other < drawn.length && other !== index)
              .map((other) => `s${other}`),
          }),
        ),
      );
      const { order, ring, before } = network(outline);
      const place = new Map(order.map((index, position) => [index, position]));
      for (const index of order) {
        for (const { from } of before[index] ?? []) {
          expect(place.get(from) ?? Number.POSITIVE_INFINITY).toBeLessThan(place.get(index) ?? -1);
        }
      }
      expect(ring.length === 0).toBe(order.length === drawn.length);
      for (const [position, { from, to }] of ring.entries()) {
        expect(before[to]?.some((link) => link.from === from)).toBe(true);
        expect(ring[(position + 1) % ring.length]?.to).toBe(from);
      }
    },
  );
});
