import { describe, expect, it } from "vitest";
import { AGE_LIMIT, ageOf, lightFor, lightMessage, readListedSpans } from "../../../src/core/light/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { later } from "../../../src/core/units/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { anyElements } from "./kepler-orbit.ts";

const HOUR = 3_600_000 as Duration;
const elements = anyElements();
const orbit = { kind: "orbit" as const, elements };
const at = (days: number) => later(elements.epoch, (days * 24 * HOUR) as Duration);

describe("the age of an element set", () => {
  it("[LGT4] is told, and is too much beyond fourteen days either way, the end of the time included", () => {
    expect(ageOf(elements, at(3))).toBe(3 * 24 * HOUR);
    expect(AGE_LIMIT).toBe(14 * 24 * HOUR);
    expect(lightFor(orbit, at(3), HOUR)).toMatchObject({ age: 3 * 24 * HOUR, isOld: false });
    expect(lightFor(orbit, at(13), (24 * HOUR) as Duration).isOld).toBe(false);
    expect(lightFor(orbit, at(13), (24 * HOUR + 1) as Duration).isOld).toBe(true);
    expect(lightFor(orbit, at(-14), HOUR)).toMatchObject({ age: -14 * 24 * HOUR, isOld: false });
    expect(lightFor(orbit, (at(-14) - 1) as Instant, HOUR).isOld).toBe(true);
  });

  it("[LGT4] is in the words, with the model and the radius", () => {
    expect(inWords(lightMessage(lightFor(orbit, at(3), HOUR)))).toBe(
      "TLE of object 25544, epoch 2024-05-06 19:53 UTC, 3.0 days before the start; SGP4, conical shadow of a sphere of 6378.137 km.",
    );
    expect(inWords(lightMessage(lightFor(orbit, at(-20), HOUR)))).toMatch(
      /20\.0 days after the start.*more than 14 days/,
    );
    const site = { latitude: 47, longitude: 8, height: 0, mask: 0 };
    expect(inWords(lightMessage(lightFor({ kind: "site", site }, at(0), HOUR)))).toMatch(
      /^Sunrise and sunset .*47°, 8°/,
    );
  });
});

describe("listed spans", () => {
  const read = (text: string) => {
    const { spans, problems } = readListedSpans(text);
    return {
      spans: spans.map(({ start, end }) => [new Date(start).toISOString(), new Date(end).toISOString()]),
      rows: problems.map(({ row }) => row),
    };
  };

  it("[LGT3] are read from instants of any offset, put in order and together", () => {
    expect(
      read(
        "\uFEFFStart, END\r\n2031-04-02T10:00:00Z,2031-04-02T10:30:00Z\r\n\r\n" +
          '2031-04-02T09:00:00Z,2031-04-02T09:10:00Z\n"2031-04-02T11:20:00+01:00",2031-04-02T10:40:00Z\n',
      ),
    ).toEqual({
      spans: [
        ["2031-04-02T09:00:00.000Z", "2031-04-02T09:10:00.000Z"],
        ["2031-04-02T10:00:00.000Z", "2031-04-02T10:40:00.000Z"],
      ],
      rows: [],
    });
  });

  it("[LGT3] bad rows are told by their line and the others kept", () => {
    const good = "2031-04-02T10:00:00Z,2031-04-02T10:30:00Z";
    const text = [
      "start,end",
      "2031-04-02T10:00:00,2031-04-02T10:30:00",
      good,
      "2031-04-02T10:30:00Z,2031-04-02T10:00:00Z",
      "2031-02-30T10:30:00Z,2031-04-02T10:00:00Z",
      `${good},west`,
      "2031-04-02T10:00:00Z",
      "2031-04-02T10:00:00Z,2031-04-02T10:00:00Z",
    ].join("\n");
    expect(read(text)).toEqual({
      spans: [["2031-04-02T10:00:00.000Z", "2031-04-02T10:30:00.000Z"]],
      rows: [2, 4, 5, 6, 7, 8],
    });
  });

  it("[LGT3] without its heading the list is told to be none", () => {
    expect(read("2031-04-02T10:00:00Z,2031-04-02T10:30:00Z").rows).toEqual([1]);
    expect(read("").rows).toEqual([1]);
    expect(read("from,to\n").rows).toEqual([1]);
  });
});
