import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Light } from "../../../src/core/light/index.ts";
import { lightFor, readOrbit } from "../../../src/core/light/index.ts";
import { lightFrom, planOf, scanStarts } from "../../../src/core/plan/index.ts";
import type { Outline } from "../../../src/core/procedure/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { between, later } from "../../../src/core/units/index.ts";
import { HORIZON } from "../../../src/core/window/index.ts";
import { plannedStep, plannedSteps } from "../planned-step.ts";
import { outlineFrom, step } from "../procedure-builder.ts";

const MINUTE = 60_000 as Duration;
const ORBIT =
  "1 25544U 98067A   24127.82853009  .00015698  00000+0  27310-3 0  9995\n" +
  "2 25544  51.6393 160.4574 0003580 140.6673 205.7250 15.50957674452123";
const { elements } = readOrbit(ORBIT);
if (!elements) throw new Error("the set is sound");
const source = { kind: "orbit" as const, elements };
const FROM = Date.UTC(2024, 4, 8, 6) as Instant;

const WINDOWS = [
  { id: "day", kind: "daylight" as const },
  { id: "night", kind: "darkness" as const },
];
const outline = outlineFrom(
  [
    step("leave", "ev1", 10),
    step("weld", "ev1", 20, { within: ["day"] }),
    step("look", "ev2", 5, { within: ["night"] }),
    step("meet", ["ev1", "ev2"], 5),
  ],
  { windows: WINDOWS, limits: { elapsed: "PT2H" } },
);

const planAt = (of: Outline, start: Instant, light: Light | null) => planOf(of, { start, light });

describe("day and night in a plan", () => {
  test.prop([fc.integer({ min: 0, max: 24 * 60 })], { numRuns: 60 })(
    "[LGT2] [PLN1] a step by daylight waits until sunrise, one by night until dark, to the millisecond",
    (offset) => {
      const start = later(FROM, (offset * MINUTE) as Duration);
      const light = lightFor(source, start, HORIZON);
      const { timeline, findings } = planAt(outline, start, light);
      expect(findings).toEqual([]);
      for (const [id, kind, ready] of [
        ["weld", "daylight", 10 * MINUTE],
        ["look", "darkness", 0],
      ] as const) {
        const planned = timeline && plannedStep(timeline, id);
        const [from, to] = [later(start, planned?.start ?? MINUTE), later(start, planned?.finish ?? MINUTE)];
        const span = light.spans?.[kind].find((one) => one.start <= from && to <= one.end);
        expect(span, `${id} lies in one span`).toBeDefined();
        const isHeld = planned?.start !== ready;
        if (isHeld) expect(from).toBe(span?.start);
        const heldBy = planned?.waits.find(({ on }) => on && "window" in on)?.on;
        expect(heldBy ?? null).toEqual(isHeld ? { window: kind === "daylight" ? "day" : "night" } : null);
        // No span before would have held it.
        const length = between(from, to);
        const earlier = light.spans?.[kind].filter(
          (one) => one.end < from && Math.max(one.start, start + ready) + length <= one.end,
        );
        expect(earlier).toEqual([]);
      }
    },
  );

  it("[LGT2] without a light the windows are not known, and the plan says so", () => {
    const { timeline, findings } = planAt(outline, FROM, null);
    expect(timeline?.course.finish).toBe(35 * MINUTE);
    expect(findings.map(({ code, things }) => [code, things])).toEqual([
      ["window/not-known", ["day"]],
      ["window/not-known", ["night"]],
    ]);
  });

  it("[PLN4] a night longer than any is told with its step", () => {
    const long = outlineFrom([step("look", "ev1", 60, { within: ["night"] })], { windows: WINDOWS });
    const { timeline, findings } = planAt(long, FROM, lightFor(source, FROM, HORIZON));
    expect(timeline).toBeNull();
    expect(findings.map(({ code, steps }) => [code, steps])).toEqual([["window/no-fit", ["look"]]]);
  });

  it("[LGT4] an element set that is old, or that decays, is told", () => {
    const late = later(FROM, (20 * 1440 * MINUTE) as Duration);
    const old = planAt(outline, late, lightFor(source, late, HORIZON)).findings;
    expect(old.map(({ level, code }) => [level, code])).toEqual([["caution", "light/old-elements"]]);
    const falling = { ...source, elements: { ...elements, meanMotion: 16.4, dragTerm: 0.9 } };
    const codes = planAt(outline, FROM, lightFor(falling, FROM, HORIZON)).findings.map(({ code }) => code);
    expect(codes).toContain("light/decayed");
  });

  it("[LGT1] what was kept with a walk gives its light again, once per start", () => {
    const record = { orbit: ORBIT };
    const light = lightFrom(record, FROM);
    expect(light?.spans).toEqual(lightFor(source, FROM, HORIZON).spans);
    expect(lightFrom(record, FROM)).toBe(light);
    expect(lightFrom({ orbit: "no orbit" }, FROM)).toBeNull();
    const onGround = lightFrom({ site: { latitude: 47, longitude: 8, height: 400 } }, FROM);
    expect([onGround?.spans?.daylight.length, onGround?.age]).toEqual([2, null]);
  });
});

describe("starts tried over a day", () => {
  const light = lightFor(source, FROM, (48 * 60 * MINUTE) as Duration);

  test.prop([fc.integer({ min: 0, max: 20 * 60 }), fc.integer({ min: 1, max: 40 }), fc.constantFrom(1, 7)], {
    numRuns: 25,
  })("[PLN1] [LGT2] agree with the plan from each start", (offset, count, minutes) => {
    const from = later(FROM, (offset * MINUTE) as Duration);
    const stride = (minutes * MINUTE) as Duration;
    const scan = scanStarts(outline, light, from, count, stride);
    expect(scan?.tried).toHaveLength(count);
    for (const [index, { start, finish, margin, waits }] of (scan?.tried ?? []).entries()) {
      expect(start).toBe(from + index * stride);
      const plan = planAt(outline, start, light);
      expect([finish, margin]).toEqual([plan.timeline?.course.finish ?? null, plan.margin]);
      const held = (plan.timeline ? plannedSteps(plan.timeline) : []).map((one) =>
        Math.max(0, ...one.waits.map(({ on, time }) => (on && "window" in on ? time : 0))),
      );
      expect(waits).toBe(held.reduce((sum, one) => sum + one, 0));
      // A light of its own begins elsewhere in the search, so that edges may lie 20 ms apart.
      const own =
        planAt(outline, start, lightFor(source, start, HORIZON)).timeline?.course.finish ?? Number.NaN;
      expect(Math.abs((finish ?? Number.NaN) - own)).toBeLessThanOrEqual(25);
    }
    const finishes = (scan?.tried ?? []).map(({ finish }) => finish ?? Number.POSITIVE_INFINITY);
    expect(scan?.best).toBe(finishes.indexOf(Math.min(...finishes)));
  });

  it("[PLN4] a start from which a step does not fit has no finish and no margin, and is not the best", () => {
    // Two hours listed for a step of one: it must start in the first of them.
    const listed = outlineFrom([step("call", "ev1", 60, { within: ["pass"] })], {
      windows: [
        {
          id: "pass",
          kind: "listed",
          spans: [{ from: "2024-05-08T06:00:00Z", to: "2024-05-08T08:00:00Z" }],
        },
      ],
      limits: { elapsed: "PT2H" },
    });
    const scan = scanStarts(
      listed,
      null,
      later(FROM, (-30 * MINUTE) as Duration),
      4,
      (30 * MINUTE) as Duration,
    );
    expect(scan?.tried.map(({ finish, margin, waits }) => [finish, margin, waits])).toEqual([
      [90 * MINUTE, 30 * MINUTE, 30 * MINUTE],
      [60 * MINUTE, 60 * MINUTE, 0],
      [60 * MINUTE, 60 * MINUTE, 0],
      [60 * MINUTE, 60 * MINUTE, 0],
    ]);
    expect(scan?.best).toBe(1);
    const late = scanStarts(
      listed,
      null,
      later(FROM, (90 * MINUTE) as Duration),
      2,
      (30 * MINUTE) as Duration,
    );
    expect(late?.tried.map(({ finish, margin, waits }) => [finish, margin, waits])).toEqual([
      [null, null, 0],
      [null, null, 0],
    ]);
    expect(late?.best).toBeNull();
  });

  it("[PLN4] a procedure that cannot be planned from any start has no scan", () => {
    const ring = outlineFrom([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev2", 1, { after: ["a"] })]);
    expect(scanStarts(ring, light, FROM, 3, MINUTE)).toBeNull();
  });

  it("[PLN4] no start is tried beyond the horizon: a step that fits only after 24 h does not fit", () => {
    // Of a site with a polar night until the second day, the horizon of the first start ends before the Sun is up.
    const site = { latitude: 69.65, longitude: 18.95, height: 0, mask: 0 };
    const start = Date.UTC(2031, 0, 14, 12) as Instant;
    const day = outlineFrom([step("read", "ev1", 5, { within: ["day"] })], { windows: WINDOWS });
    const long = lightFor({ kind: "site", site }, start, (60 * 60 * MINUTE) as Duration);
    const first = long.spans?.daylight[0]?.start ?? start;
    const early = later(first, (-25 * 60 * MINUTE) as Duration);
    const spans = lightFor({ kind: "site", site }, early, (72 * 60 * MINUTE) as Duration);
    const own = planAt(day, early, lightFor({ kind: "site", site }, early, HORIZON));
    expect(own.timeline).toBeNull();
    expect(scanStarts(day, spans, early, 1, MINUTE)?.tried[0]?.finish).toBeNull();
  });
});
