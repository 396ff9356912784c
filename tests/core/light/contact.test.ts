import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { InstantSpan } from "../../../src/core/light/index.ts";
import {
  contactSpansOf,
  elevationOf,
  mergedSpans,
  orbitOf,
  parseSite,
} from "../../../src/core/light/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { anyElements } from "./kepler-orbit.ts";

const HOUR = 3_600_000;
const orbit = orbitOf(anyElements());
const from = orbit.elements.epoch;
const to = (from + 24 * HOUR) as Instant;

const site = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  height: fc.constantFrom(-100, 0, 2400),
  mask: fc.constantFrom(-1, 0, 5, 20, 60),
});

describe("contact with a site", () => {
  test.prop([site], { numRuns: 8 })(
    "[LGT3] is where the elevation stands above the mask, by a scan",
    (place) => {
      const spans = contactSpansOf(orbit, place, from, to) ?? [];
      for (let at = from as number; at <= to; at += 20_000) {
        const position = orbit.at(at as Instant) ?? { x: 0, y: 0, z: 0 };
        const above = elevationOf(place, position, at as Instant) - place.mask;
        const isIn = spans.some(({ start, end }) => start <= at && at <= end);
        if (Math.abs(above) > 0.01) expect([at, isIn]).toEqual([at, above > 0]);
      }
    },
  );

  it("[LGT3] grazing: passes of a second or two over the mask are found", () => {
    const place = { latitude: 47, longitude: 8, height: 400, mask: 10 };
    for (const pass of contactSpansOf(orbit, place, from, to) ?? []) {
      const highest = (mask: number) =>
        contactSpansOf(
          orbit,
          { ...place, mask },
          (pass.start - HOUR / 4) as Instant,
          (pass.end + HOUR / 4) as Instant,
        );
      let [in_, out] = [place.mask as number, 90];
      for (let halving = 0; halving < 40; halving += 1) {
        const middle = (in_ + out) / 2;
        if (highest(middle)?.length) in_ = middle;
        else out = middle;
      }
      // As high as it gets, the pass that was found last is shorter than a second: nothing longer was missed below it.
      const least = (highest(in_) ?? []).map(({ start, end }) => end - start);
      expect(least).toHaveLength(1);
      expect(least[0]).toBeLessThan(1000);
    }
  });
});

const spans = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 30 }))
    .map(([start, length]): InstantSpan => ({ start: start as Instant, end: (start + length) as Instant })),
  { maxLength: 12 },
);

describe("spans put together", () => {
  test.prop([spans])("[LGT3] cover just what the given ones cover, in order and apart", (given) => {
    const merged = mergedSpans(given);
    const covers = (list: readonly InstantSpan[], at: number) =>
      list.some(({ start, end }) => start <= at && at < end);
    for (let at = 0; at < 235; at += 1) expect([at, covers(merged, at)]).toEqual([at, covers(given, at)]);
    for (const [index, { start }] of merged.entries())
      if (index > 0) expect(start).toBeGreaterThan(merged[index - 1]?.end ?? Number.NaN);
    expect(mergedSpans(merged)).toEqual(merged);
  });
});

describe("a site as written", () => {
  it.each([
    ["47.3744,8.541,408", { latitude: 47.3744, longitude: 8.541, height: 408, mask: 0 }],
    ["-31.2884, -64.2, 492.96, 5", { latitude: -31.2884, longitude: -64.2, height: 492.96, mask: 5 }],
    ["90,360,-500,-10", { latitude: 90, longitude: 360, height: -500, mask: -10 }],
    ["47,8", null],
    ["", null],
    ["47,8,", null],
    ["47,,0", null],
    ["47,8,0,5,1", null],
    ["91,8,0", null],
    ["47,361,0", null],
    ["47,8,20000", null],
    ["47,8,0,90", null],
    ["north,8,0", null],
    ["NaN,8,0", null],
    ["Infinity,8,0", null],
  ])("[LGT3] %s", (text, expected) => {
    expect(parseSite(text)).toEqual(expected);
  });
});
