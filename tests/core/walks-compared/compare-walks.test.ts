import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { learnFrom, walkRecords } from "../../../src/core/learn/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import { foldLog } from "../../../src/core/walk/index.ts";
import { compareWalks, groupDifferences } from "../../../src/core/walks-compared/index.ts";
import { flownIn, twoSteps, walkOf } from "../learn/observed-walks.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

function compared(logs: readonly (readonly Entry[])[], file: ProcedureFile = twoSteps()) {
  const records = walkRecords(logs.map((entries) => foldLog(entries)));
  return compareWalks(records, learnFrom(records, outlineOf(procedureOf(file))));
}

const ofTimes = (times: readonly number[], name = "w") =>
  times.map((time, at) => flownIn(`${name}${at}`, [time, 10]));

describe("walks side by side", () => {
  it("[CMP1] below five walks there are the walks alone, from five on points and a spread", () => {
    const [four] = compared(ofTimes([2, 3, 4, 5])).steps;
    expect(four?.observations.map(({ minutes }) => minutes)).toEqual([2, 3, 4, 5]);
    expect(four).toMatchObject({ quantiles: null, spread: null });
    const [five] = compared(ofTimes([2, 3, 4, 5, 6])).steps;
    // (5 + 1/3) p + 1/3 places from the first value on.
    expect(five?.quantiles?.p50).toBeCloseTo(4, 12);
    expect(five?.quantiles?.p25).toBeCloseTo(2 + 2 / 3, 12);
    expect(five?.quantiles?.p90).toBeCloseTo(6, 12);
    expect(five?.spread).toBeCloseTo(Math.exp(1.4826 * Math.log(4 / 3)), 1);
  });

  it("[CMP1] what was broken off is shown and is in no figure", () => {
    const broken = walkOf("broken").enter("walk.closed", { end: "terminated", reason: "" }, 50).entries;
    const [turn] = compared([...ofTimes([2, 3, 4, 5, 6]), broken]).steps;
    expect(turn?.observations).toHaveLength(6);
    expect(turn?.quantiles?.p90).toBeCloseTo(6, 12);
    expect(compared([...ofTimes([2, 3, 4, 5]), broken]).steps[0]?.quantiles).toBeNull();
  });

  it("[CMP1] the finish has points from five walks on that were closed as complete", () => {
    expect(compared(ofTimes([2, 3, 4, 5])).finish).toBeNull();
    expect(compared(ofTimes([2, 3, 4, 5, 6])).finish?.p50).toBeCloseTo(14, 12);
  });

  const pair = () =>
    fileWith([
      step("a", "ev1", 5),
      step("b", "ev1", 5),
      step("c", "ev2", 5, { after: ["a"] }),
      step("d", "ev2", 5),
    ]);

  it("[CMP1] in order, every precedence looked at is kept and every lane is as planned", () => {
    const log = walkOf("w", pair()).done(["a", 5], ["b", 9], ["c", 10], ["d", 16]);
    const [walk] = compared([log.entries], pair()).walks;
    expect(walk?.order).toEqual({ lookedAt: 3, broken: 0, share: 1 });
    expect(walk?.lanes).toMatchObject([
      { crew: "ev1", fitness: 1 },
      { crew: "ev2", fitness: 1 },
      { crew: "iv", fitness: null },
    ]);
    expect(walk?.waits).toMatchObject([{ crew: "ev2", on: { crew: ["ev1"] }, time: 300_000 }]);
  });

  it("[CMP1] a step done before what it follows breaks its precedence, and the lane in which it stands", () => {
    const log = walkOf("w", pair()).enter("step.done", { step: "b", outOfOrder: true }, 3);
    log.done(["a", 5], ["c", 10], ["d", 16]);
    const [walk] = compared([log.entries], pair()).walks;
    expect(walk?.order).toEqual({ lookedAt: 3, broken: 1, share: 1 - 1 / 3 });
    // Planned a b, done b a: one in common.
    expect(walk?.lanes[0]).toEqual({ crew: "ev1", planned: 2, flown: 2, common: 1, fitness: 0.5 });
    expect(walk?.deviations.map(({ kind }) => kind)).toContain("out-of-order");
  });

  it("[CMP1] a skipped step is not looked at, and is missing from its lane", () => {
    const log = walkOf("w", pair()).enter("step.skipped", { step: "a", reason: "" }, 1);
    log.done(["b", 5], ["c", 8], ["d", 16]);
    const [walk] = compared([log.entries], pair()).walks;
    expect(walk?.order).toEqual({ lookedAt: 1, broken: 0, share: 1 });
    expect(walk?.lanes[0]?.fitness).toBeCloseTo(2 / 3, 12);
  });

  it("[CMP1] what follows a step that was opened again later is not looked at", () => {
    const log = walkOf("w", pair()).done(["a", 5], ["b", 9], ["c", 10]);
    log.enter("step.reopened", { step: "a", reason: "slipped" }, 12).done(["a", 13]);
    expect(compared([log.entries], pair()).walks[0]?.order).toEqual({ lookedAt: 0, broken: 0, share: null });
  });

  it("[CMP1] a get-ahead counts for its lane where it was done", () => {
    const file = fileWith([
      task("work", [step("a", "ev1", 5)]),
      task("more", [step("b", "ev1", 5)], { priority: "get-ahead" }),
      task("end", [step("c", "ev1", 5)]),
    ]);
    const fitness = (...steps: [string, number][]) =>
      compared([walkOf("w", file).done(...steps).entries], file).walks[0]?.lanes[0]?.fitness;
    expect(fitness(["a", 5], ["b", 9], ["c", 14])).toBe(1);
    const skipped = walkOf("w", file).done(["a", 5]).enter("step.skipped", { step: "b", reason: "" }, 6);
    expect(compared([skipped.done(["c", 9]).entries], file).walks[0]?.lanes[0]?.fitness).toBe(1);
  });

  test.prop([fc.array(fc.double({ min: 0.5, max: 30, noNaN: true }), { minLength: 1, maxLength: 7 })])(
    "[CMP1] the order of the logs changes nothing",
    (times) => {
      const logs = ofTimes(times);
      const figures = (of: typeof logs) => {
        const { walks, steps, finish } = compared(of);
        return {
          finish,
          walks: walks.map(({ walk, finish: own, order, lanes }) => ({ walk, own, order, lanes })),
          steps: steps.map(({ quantiles, spread, observations }) => ({
            quantiles,
            spread,
            minutes: observations.map(({ minutes }) => minutes),
          })),
        };
      };
      expect(figures(logs.toReversed())).toEqual(figures(logs));
    },
  );
});

describe("two groups of walks", () => {
  const slow = ["s0", "s1", "s2", "s3"] as WalkId[];
  const differences = (first: readonly number[], second: readonly number[]) =>
    groupDifferences(
      compared([...ofTimes(first, "f"), ...ofTimes(second, "s")]).steps,
      new Set(slow.slice(0, second.length)),
    );

  it("[CMP1] a difference that chance hardly makes is shown, adjusted for the steps tested", () => {
    const [turn] = differences([3, 3.1, 2.9, 3], [6, 6.1, 5.9, 6.2]);
    expect(turn).toMatchObject({ walks: [4, 4], isShown: true });
    expect(turn?.ratio).toBeCloseTo(2.02, 1);
    expect(turn?.adjusted).toBeGreaterThanOrEqual(turn?.p ?? 1);
  });

  it("[CMP1] one that chance may make is not shown", () => {
    expect(differences([3, 4, 2.5, 3.2], [3.3, 2.8, 3.9, 3]).map(({ isShown }) => isShown)).toEqual([false]);
  });

  it("[CMP1] a group of one walk is not tested", () => {
    expect(differences([3, 3.1], [6])).toEqual([]);
  });
});
