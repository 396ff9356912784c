import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { clockText, later, parseInstant } from "../../../src/core/units/index.ts";
import { paperTime } from "../../../src/core/walk/index.ts";

const at = (text: string) => parseInstant(text) as Instant;
const ZERO = at("2031-04-02T21:30:20Z");

describe("a time as written on paper", () => {
  it.each(["1:05", "1.05", "1,05", " 01:05 ", "1:05:00"])(
    "[PAP1] %j is a PET of an hour and five minutes",
    (text) => {
      expect(paperTime(text, "pet", ZERO, later(ZERO, 7_200_000 as Duration))).toBe(ZERO + 65 * 60_000);
    },
  );

  it.each(["", "soon", "105", "1:5", "1:60", "1:05:60", "-1:05", "1:05 pm", "1:05:00:00"])(
    "[PAP1] %j is no time",
    (text) => {
      expect(paperTime(text, "pet", ZERO, ZERO)).toBeNull();
      expect(paperTime(text, "utc", ZERO, ZERO)).toBeNull();
    },
  );

  it("[PAP1] every PET as the screen shows it is read back to the second", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 * 3600 }), (seconds) => {
        const pet = (seconds * 1000) as Duration;
        expect(paperTime(clockText(pet), "pet", ZERO, ZERO)).toBe(ZERO + pet);
      }),
    );
  });

  it("[PAP1] a UTC time is the latest one up to now, across midnight too", () => {
    const now = at("2031-04-03T02:00:00Z");
    expect(paperTime("23:15", "utc", ZERO, now)).toBe(at("2031-04-02T23:15:00Z"));
    expect(paperTime("0:10:30", "utc", ZERO, now)).toBe(at("2031-04-03T00:10:30Z"));
    expect(paperTime("02:00", "utc", ZERO, now)).toBe(now);
    expect(paperTime("24:00", "utc", ZERO, now)).toBeNull();
    const longWalk = at("2031-04-04T12:00:00Z");
    expect(paperTime("11:00", "utc", ZERO, longWalk)).toBe(at("2031-04-04T11:00:00Z"));
  });

  it("[PAP1] a UTC time outside the walk stays outside, before PET 0 or later than now, whichever is less far", () => {
    const now = at("2031-04-03T02:00:00Z");
    expect(paperTime("21:30", "utc", ZERO, now)).toBe(at("2031-04-02T21:30:00Z"));
    expect(paperTime("02:01", "utc", ZERO, now)).toBe(at("2031-04-03T02:01:00Z"));
  });
});
