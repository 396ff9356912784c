import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededSource } from "../../../src/core/plan/index.ts";
import type { LabelWish } from "../../../src/core/worksite/place-labels.ts";
import { placeLabels } from "../../../src/core/worksite/place-labels.ts";
import type { Rectangle } from "../../../src/core/worksite/rectangle.ts";
import { around, overlap } from "../../../src/core/worksite/rectangle.ts";

const wishAt = (x: number, y: number, width: number, height: number): LabelWish => ({
  at: { x, y },
  width,
  height,
  mark: around({ x, y }, 18, 18),
});

const placedIn = (wishes: readonly LabelWish[], width = 600, height = 400) =>
  placeLabels(wishes, {
    bounds: { left: 0, top: 0, width, height },
    ways: [],
    number: { width: 26, height: 20 },
    gap: 4,
    chance: seededSource(1),
  });

const pairs = <Value>(list: readonly Value[]) =>
  list.flatMap((one, index) => list.slice(index + 1).map((other) => [one, other] as const));

function expectNoOverlap(wishes: readonly LabelWish[], boxes: readonly Rectangle[]) {
  expect(boxes).toHaveLength(wishes.length);
  for (const [one, other] of pairs(boxes)) expect(overlap(one, other)).toBe(false);
  for (const box of boxes) for (const { mark } of wishes) expect(overlap(box, mark)).toBe(false);
}

const wish = fc
  .record({
    x: fc.integer({ min: 0, max: 600 }),
    y: fc.integer({ min: 0, max: 400 }),
    width: fc.integer({ min: 8, max: 170 }),
    height: fc.constantFrom(18, 36, 54),
  })
  .map(({ x, y, width, height }) => wishAt(x, y, width, height));

describe("labels", () => {
  it("[MAP4] never overlap each other or a mark, and come out the same again", () => {
    fc.assert(
      fc.property(fc.array(wish, { maxLength: 40 }), (wishes) => {
        const placed = placedIn(wishes);
        expectNoOverlap(
          wishes,
          placed.map(({ box }) => box),
        );
        expect(placedIn(wishes)).toEqual(placed);
      }),
      { numRuns: 25 },
    );
  });

  it("[MAP4] stand beside their marks where there is room, and are moved for one another", () => {
    const wishes = [wishAt(300, 100, 90, 18), wishAt(312, 84, 90, 18), wishAt(324, 116, 90, 18)];
    expect(placedIn(wishes).map(({ kind }) => kind)).toEqual(["beside", "beside", "beside"]);
  });

  it("[MAP4] become numbers where nothing else has room, without one too many", () => {
    const wishes = Array.from({ length: 30 }, () => wishAt(60, 60, 110, 36));
    const placed = placedIn(wishes, 120, 120);
    expectNoOverlap(
      wishes,
      placed.map(({ box }) => box),
    );
    expect(placed.some(({ kind }) => kind === "number")).toBe(true);
  });

  it("[MAP4] of thousands of places are placed without overlap too", () => {
    const wishes = Array.from({ length: 700 }, (_, index) =>
      wishAt((index % 50) * 30, Math.floor(index / 50) * 30, 100, 18),
    );
    const boxes = placedIn(wishes, 1500, 900).map(({ box }) => box);
    for (const [index, box] of boxes.entries())
      for (const other of boxes.slice(index + 1)) if (overlap(box, other)) expect.fail("two labels overlap");
  });
});
