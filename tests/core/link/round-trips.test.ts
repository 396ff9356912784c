import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { RoundTrip } from "../../../src/core/link/index.ts";
import { clockOffsetOf } from "../../../src/core/link/index.ts";
import { ZERO } from "../log-writer.ts";

const trip = (sent: number, said: number, received: number) =>
  ({ sent: ZERO + sent, said: ZERO + said, received: ZERO + received }) as RoundTrip;

describe("[LINK] the offset of a clock", () => {
  it("is that of the shortest of several round trips, wherever it stands among them", () => {
    const trips = [trip(0, 5900, 1000), trip(2000, 7020, 2040), trip(3000, 9000, 3600)];
    for (const order of [trips, trips.toReversed(), [...trips.slice(1), ...trips.slice(0, 1)]]) {
      expect(clockOffsetOf(order)).toEqual({ offset: 5000, error: 20 });
    }
  });

  it("is right within half the trip, rounded up", () => {
    expect(clockOffsetOf([trip(0, -990, 25)])).toEqual({ offset: -1002, error: 13 });
    expect(clockOffsetOf([trip(0, 7, 0)])).toEqual({ offset: 7, error: 0 });
  });

  it("leaves out a trip during which the clock here was set back", () => {
    expect(clockOffsetOf([trip(1000, 500, 0)])).toBeNull();
    expect(clockOffsetOf([trip(1000, 500, 0), trip(0, 150, 300)])).toEqual({ offset: 0, error: 150 });
    expect(clockOffsetOf([])).toBeNull();
  });

  test.prop([
    fc.integer({ min: -1e9, max: 1e9 }),
    fc.array(
      fc.record({
        sent: fc.integer({ min: 0, max: 1e6 }),
        there: fc.integer({ min: 0, max: 300_000 }),
        back: fc.integer({ min: 0, max: 300_000 }),
      }),
      { minLength: 1, maxLength: 8 },
    ),
  ])("is within its error of the true one however unequal the two ways are", (offset, ways) => {
    const found = clockOffsetOf(
      ways.map(({ sent, there, back }) => trip(sent, sent + there + offset, sent + there + back)),
    );
    expect(found).not.toBeNull();
    if (!found) return;
    expect(Math.abs(found.offset - offset)).toBeLessThanOrEqual(found.error);
    expect(found.error).toBe(Math.ceil(Math.min(...ways.map(({ there, back }) => there + back)) / 2));
  });
});
