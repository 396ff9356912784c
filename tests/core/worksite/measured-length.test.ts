import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { PlaceId } from "../../../src/core/units/index.ts";
import { measuredLength } from "../../../src/core/worksite/index.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const measured = (...places: NonNullable<ProcedureFile["places"]>) =>
  measuredLength(
    procedureOf(fileWith([step("a", "iv", 1)], { places })),
    "one" as PlaceId,
    "other" as PlaceId,
  );

describe("the length between two places", () => {
  it("[MAP2] is measured by their positions, heights included", () => {
    expect(measured({ id: "one", x: 0, y: 0 }, { id: "other", x: 3, y: 4 })).toBe(5);
    expect(measured({ id: "one", x: 0, y: 0, z: -1 }, { id: "other", x: 2, y: 3, z: 5 })).toBe(7);
    expect(measured({ id: "one", x: 0, y: 0 }, { id: "other", x: 0.3, y: 0 })).toBe(0.3);
  });

  it("[MAP2] is not known where one of them has no position, or is none of the places", () => {
    expect(measured({ id: "one", x: 0, y: 0 }, { id: "other", x: 3 })).toBeNull();
    expect(measured({ id: "one", x: 0, y: 0 })).toBeNull();
  });

  const metres = fc.double({ min: -500, max: 500, noNaN: true });
  test.prop([metres, metres, metres, metres])(
    "[MAP2] is never shorter than straight, and by less than a decimetre longer",
    (x, y, toX, toY) => {
      const length = measured({ id: "one", x, y }, { id: "other", x: toX, y: toY });
      const straight = Math.hypot(x - toX, y - toY);
      expect(length).toBeGreaterThanOrEqual(straight - 1e-5);
      expect(length).toBeLessThan(straight + 0.1 + 1e-9);
    },
  );
});
