import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Duration } from "../../../src/core/units/index.ts";
import {
  clockText,
  formatDuration,
  hourMinuteText,
  inSeconds,
  LONGEST_DURATION,
  longest,
  NO_TIME,
  ofSeconds,
  parseDuration,
} from "../../../src/core/units/index.ts";

describe("a duration", () => {
  it.each([
    ["PT1H5M", 3_900_000],
    ["PT90S", 90_000],
    ["PT0.5S", 500],
    ["PT0,5S", 500],
    ["P1D", 86_400_000],
    ["P1DT1S", 86_401_000],
    ["PT0S", 0],
    ["PT1.0006S", 1001],
  ])("reads %s", (text, expected) => {
    expect(parseDuration(text)).toBe(expected);
  });

  it.each([
    "P1Y",
    "P1M",
    "P1W",
    "PT",
    "P",
    "",
    "PT1.5M",
    "PT1.5H",
    "-PT1M",
    "PT-1M",
    "pt1m",
    "1H",
    "PT1H ",
    "P1DT",
    "P400D",
  ])("refuses %j", (text) => {
    expect(parseDuration(text)).toBeNull();
  });

  test.prop([fc.nat({ max: LONGEST_DURATION })])("is written so that it reads back the same", (duration) => {
    expect(parseDuration(formatDuration(duration as Duration))).toBe(duration);
  });

  test.prop([fc.string()])("is read from any text without throwing", (text) => {
    const duration = parseDuration(text);
    expect(duration === null || Number.isInteger(duration)).toBe(true);
  });

  it("goes to seconds and back", () => {
    expect(inSeconds(ofSeconds(12.345))).toBe(12.345);
    expect(longest()).toBe(NO_TIME);
    expect(longest(ofSeconds(1), ofSeconds(3), ofSeconds(2))).toBe(3000);
  });

  it("is shown as on a clock, cut to the second, and in words", () => {
    expect(clockText(8_047_999 as Duration)).toBe("2:14:07");
    expect(clockText(-5_000 as Duration)).toBe("-0:00:05");
    expect(hourMinuteText(8_047_000 as Duration)).toBe("2:14");
  });
});
