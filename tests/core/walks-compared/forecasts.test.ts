import { describe, expect, it } from "vitest";
import { walkRecords } from "../../../src/core/learn/index.ts";
import type { Risk } from "../../../src/core/plan/index.ts";
import type { Duration, TaskId, WalkId } from "../../../src/core/units/index.ts";
import { forecastRisk, walkStateAt } from "../../../src/core/walk/index.ts";
import type { WalkForecasts } from "../../../src/core/walks-compared/index.ts";
import { forecastScores, forecastsOf } from "../../../src/core/walks-compared/index.ts";
import { timeOf, walkOf } from "../learn/observed-walks.ts";
import { type LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const file = (more: object = {}) =>
  fileWith(
    [
      task("one", [step("a", "ev1", null, timeOf(4, 5, 9)), step("b", "ev1", null, timeOf(4, 5, 9))]),
      task("two", [step("c", "ev1", null, timeOf(4, 5, 9))]),
      task("three", [step("d", "ev1", null, timeOf(4, 5, 9))]),
    ],
    { limits: { elapsed: "PT25M" }, ...more },
  );

function issued({ folded }: LogWriter) {
  const [record] = walkRecords([folded]);
  if (!record) throw new RangeError("no walk");
  return forecastsOf(record);
}

const complete = (log: LogWriter, at = 22) => log.enter("walk.closed", { end: "complete" }, at);

describe("forecasts as issued", () => {
  it("[CMP2] there is one at the end of each task, while steps are open, and it is what the screen said", () => {
    const log = walkOf("w", file()).done(["a", 5], ["b", 11]);
    const { ledger } = log;
    const said = forecastRisk(walkStateAt(ledger, minute(11)));
    const { issued: found, finish } = issued(complete(log.done(["c", 15], ["d", 21])));
    expect(found.map(({ task: id, at }) => [id, at])).toEqual([
      ["one", minutes(11)],
      ["two", minutes(15)],
    ]);
    expect(found[0]?.risk).toMatchObject({ p10: said?.p10, p90: said?.p90, withinLimit: said?.withinLimit });
    expect(finish).toBe(minutes(21));
  });

  it("[CMP2] what came into the log later changes no forecast that was issued before it", () => {
    const before = issued(walkOf("w", file()).done(["a", 5], ["b", 11]));
    const behind = issued(walkOf("w", file()).done(["a", 5], ["b", 11], ["c", 30]).strike(0, 31));
    expect(behind.issued[0]?.risk.p90).toBe(before.issued[0]?.risk.p90);
  });

  it("[CMP2] a task that ends twice has two, and a mark without effect none", () => {
    const log = walkOf("w", file()).done(["a", 5], ["b", 11], ["b", 11.5]);
    log.enter("step.reopened", { step: "b", reason: "slipped" }, 12).done(["b", 14]);
    expect(issued(log).issued.map(({ at }) => at)).toEqual([minutes(11), minutes(14)]);
  });

  it("[CMP2] a walk that is open, or was not closed as complete, cannot be judged", () => {
    const log = walkOf("w", file()).done(["a", 5], ["b", 11]);
    expect(issued(log).finish).toBeNull();
    expect(issued(log.enter("walk.closed", { end: "terminated", reason: "" }, 12)).finish).toBeNull();
  });

  it("[CMP2] one that had left out a get-ahead which was done is apart", () => {
    const tasks = [
      task("one", [step("a", "ev1", 5)]),
      task("two", [step("c", "ev1", 5)]),
      task("more", [step("x", "ev1", 5)], { priority: "get-ahead" }),
      task("end", [step("e", "ev1", 5)]),
    ];
    const shorter = (log: LogWriter) =>
      issued(log).issued.map(({ task: id, isOfShorter }) => [id, isOfShorter]);
    const begun = () => walkOf("w", fileWith(tasks)).done(["a", 5], ["c", 10]);
    expect(shorter(complete(begun().done(["x", 15], ["e", 20])))).toEqual([
      ["one", true],
      // Behind the second task it has come up, and is in the forecast.
      ["two", false],
      ["more", false],
    ]);
    const skipped = begun().enter("step.skipped", { step: "x", reason: "" }, 11).done(["e", 16]);
    expect(shorter(complete(skipped)).map(([, isOfShorter]) => isOfShorter)).toEqual([false, false, false]);
  });
});

describe("how forecasts did", () => {
  const risk = (from: number, to: number, withinLimit = 0.5): Risk =>
    ({ p10: from, p90: to, withinLimit, finishes: Float64Array.of(from, to) }) as unknown as Risk;

  const walk = (
    at: number,
    count: number,
    held: number,
    more: Partial<WalkForecasts> = {},
  ): WalkForecasts => ({
    walk: `w${at}` as WalkId,
    finish: 100 as Duration,
    limit: 120 as Duration,
    planned: risk(0, 40),
    issued: Array.from({ length: count }, (_, index) => ({
      walk: `w${at}` as WalkId,
      task: "one" as TaskId,
      at: 0 as Duration,
      risk: index < held ? risk(90, 110) : risk(50, 90),
      isOfShorter: false,
    })),
    ...more,
  });
  const walks = (count: number, each: number, held: number) =>
    Array.from({ length: count }, (_, at) => walk(at, each, held));

  it("[CMP2] the bands that held are counted, with the interval of their share and the scores", () => {
    const scores = forecastScores([walk(0, 10, 8)]);
    expect(scores).toMatchObject({ forecasts: 10, walks: 1, held: 8, brier: 0.25, verdict: "too-few" });
    // Eight of |90 … 110| about 100 score 10 − 5, two of |50 … 90| score 30 − 10.
    expect(scores.crps).toBeCloseTo((8 * 5 + 2 * 20) / 10, 12);
    expect(scores.plannedCrps).toBeCloseTo(80 - 10, 12);
    // One walk tells nothing of how walks differ, and counts for one.
    expect(scores.interval?.from).toBeCloseTo(0.13, 2);
  });

  it.each([
    [39, 4, 9, 9, "too-few"],
    [0, 4, 10, 8, "too-few"],
    [0, 5, 8, 6, "hold"],
    [0, 8, 10, 4, "too-narrow"],
    // All held in eight walks, which may be luck; in sixteen it is none any more.
    [0, 8, 10, 10, "hold"],
    [0, 16, 3, 3, "too-wide"],
  ] as const)("[CMP2] %s and %s walks of %s, %s held: %s", (more, count, each, held, verdict) => {
    const all = more > 0 ? [...walks(4, 9, 9), walk(4, 3, 3)] : walks(count, each, held);
    expect(forecastScores(all).verdict).toBe(verdict);
  });

  it("[CMP2] bands that hold or miss together, walk by walk, count for few, so that chance is told from a fault", () => {
    // Two thirds held in twenty walks, in each all or nothing: as if twenty had been asked.
    const all = Array.from({ length: 20 }, (_, at) => walk(at, 12, at % 3 === 0 ? 0 : 12));
    const { interval, verdict, held, forecasts } = forecastScores(all);
    expect([held, forecasts, verdict]).toEqual([156, 240, "hold"]);
    expect(interval?.to).toBeGreaterThan(0.8);
    // As many that hold and miss in each walk alike are a fault.
    expect(forecastScores(walks(20, 12, 8)).verdict).toBe("too-narrow");
  });

  it("[CMP2] without a walk that can be judged there are no figures, and nothing is said", () => {
    const open = walk(0, 5, 5, { finish: null });
    expect(forecastScores([open])).toMatchObject({
      forecasts: 0,
      leftOut: 1,
      interval: null,
      crps: null,
      brier: null,
      verdict: "too-few",
    });
  });

  it("[CMP2] a band whose end is past every window holds no finish that came", () => {
    const unfit = walk(0, 1, 1);
    const [one] = unfit.issued;
    if (!one) throw new RangeError("no forecast");
    const issuedUnfit = [{ ...one, risk: { ...one.risk, p90: null } }];
    expect(forecastScores([{ ...unfit, issued: issuedUnfit }]).held).toBe(0);
  });
});
