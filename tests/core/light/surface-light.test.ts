import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { lightFor, type Site, sunUpSpansOf } from "../../../src/core/light/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";

const HOUR = 3_600_000;
const instant = fc
  .integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2040, 0, 1) })
  .map((at) => at as Instant);
const site: fc.Arbitrary<Site> = fc.record({
  latitude: fc.double({ min: -89, max: 89, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  height: fc.constantFrom(0, 0, 1500, 4000),
  mask: fc.constant(0),
});

/** Where a search from the time looked at on gave a rise 0.2 s apart, and where it gave none beside one. */
const apart: [Site, Instant][] = [
  [{ latitude: 0, longitude: 0, height: 0, mask: 0 }, 1_942_037_873_813 as Instant],
  [{ latitude: 88.9999999999999, longitude: 0, height: 0, mask: 0 }, 1_979_811_013_035 as Instant],
];

describe("sunrise and sunset of a site", () => {
  test.prop([site, instant], { numRuns: 25, examples: apart })(
    "[LGT2] are the same wherever the time looked at begins, however near to a rise or a set",
    (place, from) => {
      const to = (from + 48 * HOUR) as Instant;
      const whole = sunUpSpansOf(place, from, to);
      for (const { start, end } of whole) {
        expect(end).toBeGreaterThan(start);
        for (const edge of [start, end])
          for (const off of [-20_000, -2000, 2000, 20_000]) {
            const later = (edge + off) as Instant;
            if (later <= from || later >= to) continue;
            const cut = sunUpSpansOf(place, later, to);
            const expected = whole
              .filter((span) => span.end > later)
              .map((span) => ({ start: Math.max(span.start, later), end: span.end }));
            expect(cut).toEqual(expected);
          }
      }
    },
  );

  it("[LGT2] a polar night has no day", () => {
    const place = { latitude: 78.2, longitude: 15.6, height: 0, mask: 0 };
    const from = Date.UTC(2031, 11, 20) as Instant;
    expect(sunUpSpansOf(place, from, (from + 48 * HOUR) as Instant)).toEqual([]);
    const light = lightFor({ kind: "site", site: place }, from, (24 * HOUR) as Duration);
    expect(light.spans?.darkness).toEqual([{ start: from, end: from + 24 * HOUR }]);
  });

  test.prop([site, instant], { numRuns: 30 })(
    "[LGT2] day and night of a site leave no gap",
    (place, from) => {
      const { spans, to, age, isOld } = lightFor(
        { kind: "site", site: place },
        from,
        (36 * HOUR) as Duration,
      );
      expect([age, isOld]).toEqual([null, false]);
      const all = [...(spans?.daylight ?? []), ...(spans?.darkness ?? [])].sort((a, b) => a.start - b.start);
      expect([all[0]?.start, all.at(-1)?.end]).toEqual([from, to]);
      for (const [index, { start }] of all.entries()) if (index > 0) expect(start).toBe(all[index - 1]?.end);
    },
  );
});
