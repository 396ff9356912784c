import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { spansBelow } from "../../../src/core/light/crossings.ts";
import type { InstantSpan, LightSpans, Orbit } from "../../../src/core/light/index.ts";
import {
  lightSpansOf,
  orbitOf,
  readOrbit,
  SHADOW_EARTH_RADIUS,
  SUN_RADIUS,
  shadowDepth,
  sunAt,
} from "../../../src/core/light/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { later } from "../../../src/core/units/index.ts";
import { anyElements, circularOrbit, keplerOrbit } from "./kepler-orbit.ts";

const NOON = Date.UTC(2031, 3, 2, 9) as Instant;
const AU = 149_597_870.7;
const HOUR = 3_600_000;
const RADIANS = Math.PI / 180;
const SUN = { x: AU, y: 0, z: 0 };

const radius = fc.double({ min: 6378.137 + 250, max: 6378.137 + 1500, noNaN: true });
const beta = fc.double({ min: 0, max: 75, noNaN: true });
const instant = fc
  .integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2040, 0, 1) })
  .map((at) => at as Instant);

/** Umbra and penumbra of an orbit under a Sun that stands still, over its first revolution from noon. */
function shadowsOf(orbit: Orbit) {
  const depth = (kind: "umbra" | "penumbra") =>
    spansBelow(
      (at) => shadowDepth(orbit.at(at as Instant) ?? { x: 0, y: 0, z: 0 }, SUN)[kind],
      NOON,
      later(NOON, orbit.period),
      orbit.period / 24,
    );
  return { umbra: depth("umbra"), penumbra: depth("penumbra") };
}

/**
 * Half of the angle that a circular orbit has in a cone, counted from midnight. The axis of a cone of half angle δ is touched by the
 * place at arcsin(R/r) ∓ δ from it, with sin δ = (R☉ ∓ R)/AU for umbra and penumbra; at `turn` from midnight the place stands at
 * arccos(cos β cos turn) from the axis.
 */
function halfAngle(r: number, betaAngle: number, kind: "umbra" | "penumbra") {
  const sign = kind === "umbra" ? -1 : 1;
  const cone = Math.asin((SUN_RADIUS + sign * SHADOW_EARTH_RADIUS) / AU);
  const widest = Math.asin(SHADOW_EARTH_RADIUS / r) + sign * cone;
  const cosine = Math.cos(widest) / Math.cos(betaAngle * RADIANS);
  const half = cosine >= 1 ? 0 : Math.acos(cosine);
  // By so much the half angle grows with the angle from the axis.
  const growth = Math.sin(widest) / Math.cos(betaAngle * RADIANS) / Math.sin(Math.max(half, 1e-3));
  return { half, growth };
}

const lengthOf = (spans: readonly InstantSpan[]) =>
  spans.reduce((sum, { start, end }) => sum + (end - start), 0);

describe("the shadow of circular orbits", () => {
  test.prop([radius, beta], { numRuns: 100 })(
    "[LGT1] lasts as long as the analytic cone says, from 0 to 75° of beta",
    (r, angle) => {
      const orbit = circularOrbit(r, angle, SUN, NOON);
      const found = shadowsOf(orbit);
      for (const kind of ["umbra", "penumbra"] as const) {
        const { half, growth } = halfAngle(r, angle, kind);
        const expected = (half / Math.PI) * orbit.period;
        // 10 ms of the search at each edge, and 5e-7 rad by which the distance to the Sun changes along the orbit.
        const slack = 25 + ((5e-7 * growth) / Math.PI) * orbit.period;
        expect(Math.abs(lengthOf(found[kind]) - expected), `${kind} of ${expected} ms`).toBeLessThan(slack);
        expect(found[kind].length).toBeLessThanOrEqual(1);
      }
    },
  );

  test.prop([radius, beta], { numRuns: 100 })(
    "[LGT1] is symmetric about the orbit's midnight",
    (r, angle) => {
      const orbit = circularOrbit(r, angle, SUN, NOON);
      const midnight = NOON + orbit.period / 2;
      for (const spans of Object.values(shadowsOf(orbit)))
        for (const { start, end } of spans)
          expect(Math.abs(midnight - start - (end - midnight))).toBeLessThan(30);
    },
  );

  it("[LGT1] grazing: a shadow of a second or two is found, one angle on there is none", () => {
    const r = SHADOW_EARTH_RADIUS + 400;
    const deepest = (angle: number) => {
      const orbit = circularOrbit(r, angle, SUN, NOON);
      const midnight = (NOON + orbit.period / 2) as Instant;
      return shadowDepth(orbit.at(midnight) ?? { x: 0, y: 0, z: 0 }, SUN).umbra;
    };
    let [inside, outside] = [60, 75];
    for (let halving = 0; halving < 60; halving += 1) {
      const middle = (inside + outside) / 2;
      if (deepest(middle) < 0) inside = middle;
      else outside = middle;
    }
    expect(shadowsOf(circularOrbit(r, outside + 1e-6, SUN, NOON)).umbra).toEqual([]);
    // The length goes with the root of the angle: from 1 s on, in steps that triple it.
    const lengths = [1e-5, 1e-4, 1e-3, 1e-2].map(
      (by) => shadowsOf(circularOrbit(r, inside - by, SUN, NOON)).umbra,
    );
    for (const [index, spans] of lengths.entries()) {
      expect(spans, `so near as ${index}`).toHaveLength(1);
      if (index > 0)
        expect(lengthOf(spans) / lengthOf(lengths[index - 1] ?? [])).toBeCloseTo(Math.sqrt(10), 0);
    }
    expect(lengthOf(lengths[0] ?? [])).toBeLessThan(5000);
    expect(lengthOf(lengths[0] ?? [])).toBeGreaterThan(1000);
  });
});

const around = (spans: LightSpans) => ({
  daylight: [...spans.daylight],
  penumbra: [...spans.penumbra],
  darkness: [...spans.darkness],
});

function expectWhole({ daylight, penumbra, darkness }: LightSpans, from: Instant, to: Instant) {
  const all = [...daylight, ...darkness].sort((a, b) => a.start - b.start);
  expect(all[0]?.start).toBe(from);
  expect(all.at(-1)?.end).toBe(to);
  for (const [index, span] of all.entries()) {
    expect(span.end).toBeGreaterThan(span.start);
    if (index > 0) expect(span.start).toBe(all[index - 1]?.end);
  }
  for (const dark of darkness) {
    // On each side of the umbra lies penumbra, unless the time looked at ends there.
    if (dark.start > from) expect(penumbra.some(({ end }) => end === dark.start)).toBe(true);
    if (dark.end < to) expect(penumbra.some(({ start }) => start === dark.end)).toBe(true);
  }
  for (const pale of penumbra) {
    expect(pale.end).toBeGreaterThan(pale.start);
    expect(darkness.some((dark) => dark.start < pale.end && pale.start < dark.end)).toBe(false);
    expect(daylight.some((day) => day.start <= pale.start && pale.end <= day.end)).toBe(true);
  }
}

const ellipse = fc.record({
  inclination: fc.double({ min: 0.01, max: 179.99, noNaN: true }),
  ascendingNode: fc.double({ min: 0, max: 360, noNaN: true }),
  argumentOfPericenter: fc.double({ min: 0, max: 360, noNaN: true }),
  meanAnomaly: fc.double({ min: 0, max: 360, noNaN: true }),
  eccentricity: fc.double({ min: 0, max: 0.7, noNaN: true }),
  perigee: fc.double({ min: 6378.137 + 300, max: 6378.137 + 1200, noNaN: true }),
});
type Ellipse = typeof ellipse extends fc.Arbitrary<infer Of> ? Of : never;

/** So long an ellipse that all its night lies between two looks of a 24th of a revolution. */
const nightAtPerigee: [Instant, Ellipse] = [
  1_739_252_350_900 as Instant,
  {
    inclination: 179.9895689034321,
    ascendingNode: 0,
    argumentOfPericenter: 0,
    meanAnomaly: 0,
    eccentricity: 0.6960998535149093,
    perigee: 6701.579605438978,
  },
];

describe("day and night of an orbit", () => {
  test.prop(
    [instant, radius, fc.double({ min: -90, max: 90, noNaN: true }), fc.integer({ min: 1, max: 30 })],
    {
      numRuns: 40,
    },
  )("[LGT2] leave no gap and do not overlap; penumbra adjoins the umbra", (at, r, angle, hours) => {
    const orbit = circularOrbit(r, angle, sunAt(at), at);
    const to = later(at, (hours * HOUR) as Duration);
    const spans = lightSpansOf(orbit, at, to);
    expect(spans).not.toBeNull();
    if (spans) expectWhole(spans, at, to);
  });

  test.prop([instant, ellipse], { numRuns: 15, examples: [nightAtPerigee] })(
    "[LGT1] [LGT2] agree with a scan by half a minute for ellipses by SGP4",
    (epoch, { perigee, ...drawn }) => {
      const axis = perigee / (1 - drawn.eccentricity);
      const meanMotion = 86_400 / (2 * Math.PI * Math.sqrt(axis ** 3 / 398_600.8));
      const orbit = orbitOf({ ...anyElements(), ...drawn, epoch, epochRest: 0, meanMotion, dragTerm: 0 });
      const to = later(epoch, (12 * HOUR) as Duration);
      const spans = lightSpansOf(orbit, epoch, to);
      expect(spans).not.toBeNull();
      if (!spans) return;
      expectWhole(spans, epoch, to);
      for (let at = epoch as number; at <= to; at += 30_000) {
        const isDark = spans.darkness.some(({ start, end }) => start <= at && at <= end);
        const { umbra } = shadowDepth(orbit.at(at as Instant) ?? { x: 0, y: 0, z: 0 }, sunAt(at as Instant));
        // Within an arc second of the edge the search and the scan, whose Sun is not quite the same, may differ.
        if (Math.abs(umbra) > 1e-5) expect([at, isDark]).toEqual([at, umbra < 0]);
      }
    },
  );

  it("[LGT2] an orbit along the terminator has neither darkness nor penumbra", () => {
    const orbit = circularOrbit(SHADOW_EARTH_RADIUS + 800, 88, sunAt(NOON), NOON);
    const to = later(NOON, (24 * HOUR) as Duration);
    expect(around(lightSpansOf(orbit, NOON, to) as LightSpans)).toEqual({
      daylight: [{ start: NOON, end: to }],
      penumbra: [],
      darkness: [],
    });
  });

  it("[LGT2] penumbra stands alone where the umbra is just missed", () => {
    const r = SHADOW_EARTH_RADIUS + 400;
    const spans = lightSpansOf(
      circularOrbit(r, 70.2, sunAt(NOON), NOON),
      NOON,
      later(NOON, HOUR as Duration),
    );
    expect(spans?.darkness).toEqual([]);
    expect(spans?.penumbra).toHaveLength(1);
    expect(spans?.daylight).toHaveLength(1);
  });

  it("[LGT2] a window that opens in the umbra opens in darkness", () => {
    const orbit = circularOrbit(SHADOW_EARTH_RADIUS + 400, 20, sunAt(NOON), NOON);
    const midnight = (NOON + orbit.period / 2) as Instant;
    const to = later(midnight, orbit.period);
    const spans = lightSpansOf(orbit, midnight, to);
    expect(spans?.darkness[0]?.start).toBe(midnight);
    expect(spans?.darkness.at(-1)?.end).toBe(to);
    expect(spans?.daylight).toHaveLength(1);
  });

  it("[LGT1] day by day over more than one revolution of an orbit of half a day, with its single shadow", () => {
    const sun = sunAt(NOON);
    const far = Math.hypot(sun.x, sun.y, sun.z);
    const [axis, e] = [26_560, 0.7];
    const away = { x: -sun.x / far, y: -sun.y / far, z: -sun.z / far };
    const across = { x: -away.y, y: away.x, z: 0 };
    const norm = Math.hypot(across.x, across.y);
    const speed = Math.sqrt((398_600.4418 / axis) * ((1 + e) / (1 - e)));
    // Perigee lies behind the Earth, so that the shadow is the shortest and comes at the greatest speed.
    const orbit = keplerOrbit(
      { x: away.x * axis * (1 - e), y: away.y * axis * (1 - e), z: away.z * axis * (1 - e) },
      { x: (across.x / norm) * speed, y: (across.y / norm) * speed, z: 0 },
      NOON,
    );
    const from = (NOON - orbit.period / 4) as Instant;
    const to = later(from, (3 * orbit.period) as Duration);
    const spans = lightSpansOf(orbit, from, to);
    expect(spans?.darkness).toHaveLength(3);
    if (spans) expectWhole(spans, from, to);
    const [first, second] = spans?.darkness ?? [];
    expect(Math.abs((second?.start ?? 0) - (first?.start ?? 0) - orbit.period)).toBeLessThan(60_000);
  });

  it("[LGT1] a geostationary vehicle is dark once a day about the equinox and never at the solstice", () => {
    const { elements } = readOrbit(
      "1 23581U 95025A   07064.44075725 -.00000113  00000-0  10000-3 0  9250\n" +
        "2 23581   3.0539  81.7939 0005013 249.2363 150.1602  1.00273272 43169",
    );
    expect(elements).not.toBeNull();
    if (!elements) return;
    const orbit = orbitOf({ ...elements, inclination: 0.01 });
    const days = (from: number, count: number) =>
      lightSpansOf(orbit, from as Instant, (from + count * 24 * HOUR) as Instant)?.darkness.length;
    expect(days(Date.UTC(2007, 2, 18), 4)).toBe(4);
    expect(days(Date.UTC(2007, 5, 18), 4)).toBe(0);
  });
});
