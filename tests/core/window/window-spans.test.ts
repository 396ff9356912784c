import { describe, expect, it } from "vitest";
import type { Instant, WindowId } from "../../../src/core/units/index.ts";
import { HORIZON, windowSpansOf } from "../../../src/core/window/index.ts";
import { minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const START = Date.UTC(2031, 3, 2, 9) as Instant;
const { windows, ...rest } = procedureOf(
  fileWith([step("a", "ev1", 1)], {
    windows: [
      {
        id: "pass",
        kind: "listed",
        spans: [
          { from: "2031-04-02T09:30:00Z", to: "2031-04-02T09:40:00Z" },
          { from: "2031-04-03T08:50:00Z", to: "2031-04-03T09:10:00Z" },
          { from: "2031-04-05T09:00:00Z", to: "2031-04-05T10:00:00Z" },
        ],
      },
      { id: "late", kind: "listed", spans: [{ from: "PT1H", to: "P3D" }] },
    ],
  }),
);
const spans = (id: string, start: Instant | null) =>
  windowSpansOf({ ...rest, windows }, start).get(id as WindowId);

describe("the spans of windows", () => {
  it("[PLN4] given as instants end a day after the start, so that a wrong start is not waited for in thousands of hours", () => {
    expect(spans("pass", START)).toEqual([
      { from: minutes(30), to: minutes(40) },
      { from: HORIZON - minutes(10), to: HORIZON },
    ]);
    expect(spans("pass", Date.UTC(2026, 10, 29) as Instant)).toEqual([]);
    expect(spans("pass", null)).toBeNull();
  });

  it("[PLN4] given as PET end with the last of them", () => {
    expect(spans("late", START)).toEqual([{ from: minutes(60), to: minutes(3 * 1440) }]);
  });
});
