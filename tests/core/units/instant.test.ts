import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Instant } from "../../../src/core/units/index.ts";
import {
  between,
  dayOfYear,
  formatInstant,
  later,
  ofSeconds,
  parseInstant,
} from "../../../src/core/units/index.ts";

describe("an instant", () => {
  it.each([
    ["2031-04-02T09:12:31.500Z", "2031-04-02T09:12:31.500Z"],
    ["2031-04-02T09:12:31Z", "2031-04-02T09:12:31.000Z"],
    ["2031-04-02t11:12:31.5+02:00", "2031-04-02T09:12:31.500Z"],
    ["2028-02-29T23:59:59-00:30", "2028-03-01T00:29:59.000Z"],
  ])("reads %s", (text, expected) => {
    expect(formatInstant(parseInstant(text) as Instant)).toBe(expected);
  });

  it.each([
    "2031-04-02",
    "2031-04-02T09:12Z",
    "2031-04-02T09:12:31",
    "2031-02-29T00:00:00Z",
    "2031-04-31T00:00:00Z",
    "2031-13-01T00:00:00Z",
    "2031-04-02T24:00:00Z",
    "2031-04-02 09:12:31Z",
    "9999-12-31T23:59:59-12:00",
    "0000-01-01T00:00:00+12:00",
    "",
  ])("refuses %j", (text) => {
    expect(parseInstant(text)).toBeNull();
  });

  test.prop([fc.date({ min: new Date("1970-01-01"), max: new Date("9999-12-31"), noInvalidDate: true })])(
    "is written so that it reads back the same",
    (date) => {
      expect(parseInstant(formatInstant(date.getTime() as Instant))).toBe(date.getTime());
    },
  );

  it("moves by durations", () => {
    const at = parseInstant("2031-04-02T09:00:00Z") as Instant;
    expect(formatInstant(later(at, ofSeconds(90)))).toBe("2031-04-02T09:01:30.000Z");
    expect(between(later(at, ofSeconds(90)), at)).toBe(-90_000);
  });

  it("refuses to write what RFC 3339 cannot", () => {
    expect(() => formatInstant(Number.NaN as Instant)).toThrow(RangeError);
    expect(() => formatInstant(1e15 as Instant)).toThrow(RangeError);
    expect(() => formatInstant(-1e14 as Instant)).toThrow(RangeError);
  });
});

describe("the day of the year", () => {
  const day = (text: string) => dayOfYear(parseInstant(text) as Instant);

  it("[WRD6] counts from 1, with the last of February in a leap year alone, by UTC whatever the offset", () => {
    expect(["2031-01-01T00:00:00Z", "2031-04-02T23:59:59.999Z", "2031-12-31T00:00:00Z"].map(day)).toEqual([
      1, 92, 365,
    ]);
    expect(["2028-02-29T12:00:00Z", "2028-03-01T00:00:00Z", "2028-12-31T23:59:59Z"].map(day)).toEqual([
      60, 61, 366,
    ]);
    expect(["2100-03-01T00:00:00Z", "2000-03-01T00:00:00Z"].map(day)).toEqual([60, 61]);
    expect(day("2031-01-01T01:00:00+02:00")).toBe(365);
  });

  test.prop([fc.date({ min: new Date("0001-01-01"), max: new Date("9999-12-31"), noInvalidDate: true })])(
    "[WRD6] is the one that gives the date again",
    (date) => {
      const number = dayOfYear(date.getTime() as Instant);
      const again = new Date(date);
      again.setUTCMonth(0, number);
      expect(again.toISOString().slice(0, 10)).toBe(date.toISOString().slice(0, 10));
    },
  );
});
