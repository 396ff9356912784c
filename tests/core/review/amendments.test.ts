import { describe, expect, it } from "vitest";
import { reviewCsv, reviewDocument, reviewOf, reviewXes } from "../../../src/core/review/index.ts";
import { stateDocument } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

/** By likely times: a 0–10, b 10–20, c 20–30; EV2: q 0–12. */
const FILE = fileWith(
  [task("all", [step("a", "ev1", 10), step("q", "ev2", 12), step("b", "ev1", 10), step("c", "ev1", 10)])],
  { limits: { elapsed: "PT60M" } },
);

function amendedWalk(): LogWriter {
  const log = LogWriter.started(FILE)
    .done(["a", 15])
    .enter("note.made", { text: "No need.", step: "c" }, 15.5);
  log.enter(
    "plan.amended",
    {
      changes: [
        { drop: "c" },
        { change: "b", set: { time: "PT14M" } },
        { add: step("n", "ev1", 2), behind: "b" },
      ],
      reason: "c, as ground asked",
      needs: 2,
    },
    16,
  );
  const amendment = { source: "/devices/iv-tablet", id: "0000000005" };
  log.enter("amendment.seen", { amendment }, 17, { source: "/devices/ground", actor: "capcom" });
  return log.done(["q", 18], ["b", 31], ["n", 33]).enter("walk.closed", { end: "complete" }, 35);
}

const reviewed = (log: LogWriter) => {
  const review = reviewOf(log.folded, minute(40));
  if (!review) throw new Error("no review");
  return review;
};

const AMENDMENT = {
  source: "/devices/iv-tablet",
  id: "0000000005",
  at: "2031-04-02T09:16:00.000Z",
  reason: "c, as ground asked",
  steps: [
    { step: "b", how: "changed" },
    { step: "n", how: "added" },
    { step: "c", how: "dropped" },
  ],
  finish: { before: 35 * 60, after: 31 * 60 },
  margin: { before: 25 * 60, after: 29 * 60 },
};

describe("the review of a walk whose plan was amended", () => {
  it("[AMD2] [REV1] tells who amended it, when, why, what changed, and what it did to finish and margin", () => {
    const document = reviewDocument(reviewed(amendedWalk()), inWords);
    expect(document.amendments).toEqual([
      {
        ...AMENDMENT,
        pet: 960,
        actor: "iv",
        changes: ["step c: dropped", "step b: time PT10M → PT14M", "step n: added behind b; Do n"],
        seen: [{ at: "2031-04-02T09:17:00.000Z", actor: "capcom", source: "/devices/ground" }],
      },
    ]);
    expect(document.deviations).toContainEqual({
      kind: "amended",
      step: null,
      text: "The plan was amended: c, as ground asked",
      at: "2031-04-02T09:16:00.000Z",
    });
  });

  it("[AMD2] [REV1] shows the plan of record beside the plan in force", () => {
    const document = reviewDocument(reviewed(amendedWalk()), inWords);
    expect(document.finish).toMatchObject({ planned: 1800, inForce: 1860, actual: 1980, difference: 180 });
    const times = document.steps.map(({ step: id, planned, inForce, amended }) => [
      id,
      planned && [planned.start, planned.finish],
      inForce && [inForce.start, inForce.finish],
      amended,
    ]);
    expect(times).toEqual([
      ["a", [0, 600], [0, 900], []],
      ["q", [0, 720], [0, 960], []],
      ["b", [600, 1200], [900, 1740], ["changed"]],
      ["n", null, [1740, 1860], ["added"]],
    ]);
    expect(document.dropped).toEqual([
      {
        step: "c",
        number: "1.4",
        task: "all",
        by: ["ev1"],
        planned: { start: 1200, finish: 1800, time: 600 },
      },
    ]);
    expect(document.notes.map(({ text }) => text)).toEqual(["No need."]);
  });

  it("[AMD2] [REV1] of a walk that was not amended has the plan of record in force", () => {
    const review = reviewed(LogWriter.started(FILE).done(["a", 15]));
    expect(review.amendments).toEqual([]);
    expect(review.dropped).toEqual([]);
    expect(review.inForceFinish).toBe(review.plannedFinish);
    for (const { planned, inForce } of review.steps) expect(inForce).toEqual(planned);
  });

  it("[REV2] carries amendments in CSV and XES", () => {
    const review = reviewed(amendedWalk());
    const lines = reviewCsv(review, inWords).trimEnd().split("\r\n");
    const [heading = ""] = lines;
    const cells = (line = "") =>
      Object.fromEntries(line.split(",").map((cell, at) => [heading.split(",")[at], cell]));
    expect(
      lines
        .slice(1)
        .map(cells)
        .map((row) => [row["step"], row["in_force_finish_s"], row["amended"]]),
    ).toEqual([
      ["a", "900", ""],
      ["q", "960", ""],
      ["b", "1740", "changed"],
      ["n", "1860", "added"],
      ["c", "", "dropped"],
    ]);
    expect(cells(lines.at(-1))).toMatchObject({ number: "1.4", ending: "dropped", planned_finish_s: "1800" });
    const xes = reviewXes(review);
    expect(xes).toContain('<string key="concept:name" value="plan.amended"/>');
    expect(xes).toContain('<string key="reason" value="c, as ground asked"/>');
    expect(xes).toContain('<string key="steps" value="b changed; n added; c dropped"/>');
  });

  it("[AMD2] stands in the state document", () => {
    expect(stateDocument(amendedWalk().folded, minute(40), inWords)?.amendments).toEqual([
      {
        ...AMENDMENT,
        by: "iv",
        seen: [{ by: "capcom", at: "2031-04-02T09:17:00.000Z", source: "/devices/ground" }],
      },
    ]);
  });
});
