import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { spansBelow } from "../../../src/core/light/crossings.ts";
import type { Instant } from "../../../src/core/units/index.ts";

const at = (instant: number) => instant as Instant;
const MINUTE = 60_000;
const REVOLUTION = 90 * MINUTE;
const DAY = 16 * REVOLUTION;

/** A depth that dips once a revolution, as a shadow does, in an uneven way. */
const drawnDepth = fc
  .record({
    level: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    phase: fc.double({ min: 0, max: 6.28, noNaN: true }),
    // Within this a second harmonic adds no second dip.
    uneven: fc.double({ min: 0, max: 0.2, noNaN: true }),
    drift: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  })
  .map(({ level, phase, uneven, drift }) => (instant: number) => {
    const turn = (2 * Math.PI * instant) / REVOLUTION + phase;
    return Math.cos(turn) + uneven * Math.cos(2 * turn + 1) + level + drift * Math.sin(instant / DAY);
  });

describe("spans below zero", () => {
  test.prop([drawnDepth, fc.integer({ min: 0, max: REVOLUTION })], { numRuns: 40 })(
    "[LGT1] are those of a scan by the second, to a hundredth of one",
    (depth, from) => {
      const to = from + 5 * REVOLUTION;
      const spans = spansBelow(depth, at(from), at(to), REVOLUTION / 24);
      const scanned: { start: number; end: number }[] = [];
      let last: { start: number; end: number } | null = null;
      for (let instant = from; instant <= to; instant += 1000) {
        if (depth(instant) >= 0) last = null;
        else if (last) last.end = instant;
        else {
          last = { start: instant, end: instant };
          scanned.push(last);
        }
      }
      // What the scan steps over is shorter than a second or two.
      const long = spans.filter(({ start, end }) => end - start > 2000);
      for (const { start, end } of scanned) {
        const found = spans.find((span) => span.start - 11 <= start && end <= span.end + 11);
        expect(found, `the scan's span at ${start}`).toBeDefined();
        if (found) {
          expect(start - found.start).toBeLessThan(1011);
          expect(found.end - end).toBeLessThan(1011);
        }
      }
      expect(long.length).toBeLessThanOrEqual(scanned.length);
      for (const { start, end } of spans) {
        for (const edge of [start, end]) {
          if (edge === from || edge === to) continue;
          expect(depth(edge - 20) < 0, `an edge at ${edge}`).not.toBe(depth(edge + 20) < 0);
        }
      }
    },
  );

  test.prop(
    [fc.double({ min: 500, max: 4000, noNaN: true }), fc.double({ min: 0.05, max: 0.95, noNaN: true })],
    {
      numRuns: 200,
    },
  )("[LGT1] no dip of a second or more is missed, wherever it lies between looks", (half, place) => {
    const bottom = 3 * MINUTE + place * MINUTE;
    // A dip as flat as a grazing shadow: zero half its length away from its bottom.
    const depth = (instant: number) => ((instant - bottom) ** 2 - half ** 2) / MINUTE ** 2;
    const [span, ...more] = spansBelow(depth, at(0), at(10 * MINUTE), MINUTE);
    expect(more).toEqual([]);
    expect(Math.abs((span?.start ?? Number.NaN) - (bottom - half))).toBeLessThan(11);
    expect(Math.abs((span?.end ?? Number.NaN) - (bottom + half))).toBeLessThan(11);
  });

  it("[LGT1] a gap as short as a dip is found too", () => {
    const gap = (instant: number) => (800 ** 2 - (instant - 200_000) ** 2) / MINUTE ** 2;
    expect(spansBelow(gap, at(0), at(10 * MINUTE), MINUTE)).toHaveLength(2);
  });

  it("[LGT1] begin and end with the time looked at", () => {
    expect(spansBelow(() => -1, at(5), at(1000), 100)).toEqual([{ start: 5, end: 1000 }]);
    expect(spansBelow(() => 1, at(5), at(1000), 100)).toEqual([]);
    const [before] = spansBelow((instant) => instant - 430, at(0), at(1000), 100);
    expect([before?.start, Math.abs((before?.end ?? 0) - 430) < 11]).toEqual([0, true]);
    const [behind] = spansBelow((instant) => 430 - instant, at(0), at(1000), 100);
    expect([Math.abs((behind?.start ?? 0) - 430) < 11, behind?.end]).toEqual([true, 1000]);
  });
});
