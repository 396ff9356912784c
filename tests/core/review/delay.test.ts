import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { reviewDocument, reviewOf } from "../../../src/core/review/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

function reviewed(log: LogWriter) {
  const review = reviewOf(log.folded, minute(500));
  if (!review) throw new Error("no walk was opened");
  return review;
}

const sharesOf = (log: LogWriter) => reviewed(log).delay.map(({ step: id, share }) => [id, inMinutes(share)]);

const FILE = fileWith([step("a", "ev1", 10), step("b", "ev2", 5), step("c", ["ev1", "ev2"], 20)]);

describe("what made the delay", () => {
  it("[REV6] is told along the chain that led to the last finish", () => {
    expect(sharesOf(LogWriter.started(FILE).done(["b", 5], ["a", 14], ["c", 33]))).toEqual([
      ["a", 4],
      ["c", -1],
    ]);
    // The other step was done last before the joint one began, so the chain goes over it.
    expect(sharesOf(LogWriter.started(FILE).done(["a", 10], ["b", 16], ["c", 36]))).toEqual([
      ["b", 11],
      ["c", -5],
    ]);
  });

  it("[REV6] gives a step that is not in the plan its whole time for its share", () => {
    const file = fileWith([
      task("work", [step("a", "ev1", 10)]),
      task("spare", [step("extra", "ev1", 5)], { priority: "get-ahead" }),
      task("end", [step("z", "ev1", 10)]),
    ]);
    expect(sharesOf(LogWriter.started(file).done(["a", 10], ["extra", 16], ["z", 26]))).toEqual([
      ["a", 0],
      ["extra", 6],
      ["z", 0],
    ]);
  });

  it("[REV6] is empty when nothing was done", () => {
    expect(sharesOf(LogWriter.started(FILE))).toEqual([]);
    expect(sharesOf(LogWriter.opened(FILE))).toEqual([]);
  });

  test.prop([
    fc.integer({ min: 1, max: 60 }),
    fc.integer({ min: 1, max: 60 }),
    fc.integer({ min: 1, max: 60 }),
  ])("[REV6] adds up to the difference of the finish", (a, b, c) => {
    const last = Math.max(a, b) + c;
    const marks = (
      [
        ["a", a],
        ["b", b],
      ] as const
    ).toSorted((x, y) => x[1] - y[1]);
    const review = reviewed(LogWriter.started(FILE).done(...marks, ["c", last]));
    expect(review.delay.reduce((sum, { share }) => sum + share, 0)).toBe(review.finishDifference);
  });

  it("[REV6] stands in JSON with low and high, in seconds", () => {
    const document = reviewDocument(reviewed(LogWriter.started(FILE).done(["a", 14])), inWords);
    expect(document.delay).toEqual([
      {
        step: "a",
        share: 240,
        time: 840,
        plannedTime: 600,
        low: expect.any(Number),
        high: expect.any(Number),
      },
    ]);
  });
});
