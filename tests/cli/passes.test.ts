import { afterAll, describe, expect, it } from "vitest";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const LINES = [
  "1 25544U 98067A   14020.93268519  .00009878  00000-0  18200-3 0  5082",
  "2 25544  51.6498 109.4756 0003572  55.9686 274.8005 15.49815350868473",
];
const orbit = scratch.write("orbit.tle", LINES.join("\n"));

interface SpanDocument {
  readonly kind: string;
  readonly start: string;
  readonly end: string;
}

async function spansOf(...args: readonly string[]): Promise<SpanDocument[]> {
  const { status, out, err } = await tetherline("passes", orbit, ...args, "--json");
  expect([status, err]).toEqual([0, ""]);
  const document = JSON.parse(out) as { spans: SpanDocument[] };
  expect(Object.keys(document)).toEqual(["spans"]);
  return document.spans;
}

const WINDOW = ["--from", "2014-01-20T00:00:00Z", "--hours", "2"];
const within = (found: string | undefined, expected: string, ms: number) =>
  expect(Math.abs(Date.parse(found ?? "") - Date.parse(expected)), `${found} for ${expected}`).toBeLessThan(
    ms,
  );

describe("passes", () => {
  it("[LGT2] has spans of day, penumbra and night, each with kind, start and end, in the order of their starts", async () => {
    const spans = await spansOf(...WINDOW);
    // At sunrise penumbra and daylight start together; the one that ends first comes first.
    expect(spans.map(({ kind }) => kind)).toEqual([
      "daylight",
      "penumbra",
      "darkness",
      "penumbra",
      "daylight",
    ]);
    for (const span of spans) {
      expect(Object.keys(span)).toEqual(["kind", "start", "end"]);
      for (const text of [span.start, span.end]) expect(text).toMatch(/^2014-01-20T\d\d:\d\d:\d\d\.\d{3}Z$/);
    }
    const [day, pale, dark, last, next] = spans;
    expect([day?.start, next?.end]).toEqual(["2014-01-20T00:00:00.000Z", "2014-01-20T02:00:00.000Z"]);
    expect([dark?.start, dark?.end]).toEqual([day?.end, next?.start]);
    within(pale?.start, "2014-01-20T00:38:01.242Z", 500);
    within(dark?.start, "2014-01-20T00:38:09.688Z", 500);
    within(dark?.end, "2014-01-20T01:13:59.103Z", 500);
    within(last?.end, "2014-01-20T01:14:07.527Z", 500);
  });

  it("[LGT3] has the contact with a site above its mask", async () => {
    const args = ["--from", "2014-01-23T00:00:00Z", "--hours", "24", "--site", "40.8939,-83.8917,0,30"];
    const contact = (await spansOf(...args)).filter(({ kind }) => kind === "contact");
    expect(contact).toHaveLength(2);
    within(contact[0]?.start, "2014-01-23T06:25:37Z", 1000);
    within(contact[0]?.end, "2014-01-23T06:28:19Z", 1000);
    within(contact[1]?.start, "2014-01-23T12:54:56Z", 1000);
    within(contact[1]?.end, "2014-01-23T12:57:58Z", 1000);
  });

  it("[LGT3] puts several sites together: the mask is 0° unless said, a site twice counts once", async () => {
    const day = ["--from", "2014-01-23T00:00:00Z", "--hours", "24"];
    const of = async (...sites: string[]) =>
      (await spansOf(...day, ...sites.flatMap((site) => ["--site", site]))).filter(
        ({ kind }) => kind === "contact",
      );
    const here = await of("40.8939,-83.8917,0");
    expect(await of("40.8939,-83.8917,0", "40.8939,-83.8917,0,0")).toEqual(here);
    const there = await of("-31.2884,-64.2,492");
    const both = await of("40.8939,-83.8917,0", "-31.2884,-64.2,492");
    expect(both.length).toBeLessThanOrEqual(here.length + there.length);
    const length = (spans: SpanDocument[]) =>
      spans.reduce((sum, { start, end }) => sum + Date.parse(end) - Date.parse(start), 0);
    expect(length(both)).toBeLessThanOrEqual(length(here) + length(there));
    expect(length(both)).toBeGreaterThan(length(here));
    // Sites close by are in contact at once, which is one span.
    expect((await of("40.8939,-83.8917,0", "41,-84,0")).length).toBe(here.length);
  });

  it("[LGT1] says in words what it rests on, and that it only advises", async () => {
    const { status, out } = await tetherline("passes", orbit, ...WINDOW);
    expect(status).toBe(0);
    expect(out).toMatch(
      /^TLE of object 25544, epoch 2014-01-20 22:23 UTC, .*SGP4, conical shadow of a sphere of 6378\.137 km\./,
    );
    expect(out).toMatch(/2014-01-20 00:38:09\.\d\s+2014-01-20 01:13:59\.\d\s+.*darkness/);
    expect(out).toMatch(/flight rules/);
  });

  it("[LGT4] warns of an element set that is older than fourteen days, and goes on", async () => {
    const { status, out, err } = await tetherline(
      "passes",
      orbit,
      "--from",
      "2014-03-01T00:00:00Z",
      "--hours",
      "2",
      "--json",
    );
    expect(status).toBe(0);
    expect(err).toMatch(/caution: .*39\.1 days before the start.*more than 14 days/);
    expect((JSON.parse(out) as { spans: unknown[] }).spans).toHaveLength(5);
  });

  it.each([
    [
      "a wrong checksum",
      LINES.join("\n").replace("5082", "5083"),
      /line 1: its checksum is 3, but its digits add up to 2/,
    ],
    ["no orbit at all", "hello", /file: a two-line element set has two lines/],
    ["an empty file", "", /file: it is empty/],
    [
      "an OMM without its drag term",
      '{"EPOCH":"2024-05-06T19:53:04"}',
      /MEAN_MOTION: it is missing \(and \d+ more\)\.$/,
    ],
    ["JSON cut short", '{"EPOCH":', /file: it is not valid JSON/],
  ])("[LGT1] %s is refused in one sentence", async (_, text, sentence) => {
    const file = scratch.write("refused", text);
    const { status, out, err } = await tetherline("passes", file, ...WINDOW, "--json");
    expect([status, out]).toEqual([2, ""]);
    expect(err.trimEnd()).toMatch(sentence);
    expect(err.trimEnd()).not.toContain("\n");
  });

  it("[LGT1] an orbit that decays within the time is refused in one sentence", async () => {
    const file = scratch.write(
      "decays.tle",
      "1 28872U 05037B   05333.02012661  .25992681  00000-0  24476-3 0  1534\n" +
        "2 28872  96.4736 157.9986 0303955 244.0492 110.6523 16.46015938 10708",
    );
    const { status, out, err } = await tetherline(
      "passes",
      file,
      "--from",
      "2005-11-29T00:30:00Z",
      "--hours",
      "3",
    );
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(/the orbit decays within the time asked for\.\n$/);
  });

  it.each([
    ["no --from", ["--hours", "2"]],
    ["no --hours", ["--from", "2014-01-20T00:00:00Z"]],
    ["no length", ["--from", "2014-01-20T00:00:00Z", "--hours", "0"]],
    ["a length below zero", ["--from", "2014-01-20T00:00:00Z", "--hours", "-1"]],
    ["a length that is no number", ["--from", "2014-01-20T00:00:00Z", "--hours", "NaN"]],
    ["an instant without a zone", ["--from", "2014-01-20T00:00:00", "--hours", "2"]],
    ["half a site", [...WINDOW, "--site", "40,80"]],
    ["a site off the Earth", [...WINDOW, "--site", "95,80,0"]],
  ])("[LGT3] %s cannot be used", async (_, args) => {
    const { status, out, err } = await tetherline("passes", orbit, ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(/^[^\n]+\n$/);
  });

  it("takes a file that is not there as unusable", async () => {
    const { status, err } = await tetherline("passes", scratch.path("none"), ...WINDOW);
    expect([status, err.split("\n").length]).toEqual([2, 2]);
  });
});
