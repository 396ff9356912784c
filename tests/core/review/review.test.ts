import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { readLines, writeLines } from "../../../src/core/log/index.ts";
import type { Review } from "../../../src/core/review/index.ts";
import { reviewDocument, reviewOf } from "../../../src/core/review/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { foldLog, stateDocument } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { plainWaits } from "../planned-step.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const ask = { decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" } };
const FILE = fileWith(
  [
    task("go", [step("walk-out", "ev1", null, { to: "boom" }), step("b1", "ev2", 3)]),
    task("work", [
      step("meet", ["ev1", "ev2"], 2, {
        records: [{ id: "turns", label: "Turns", min: 6, max: 7 }],
        confirm: { by: "iv", text: "Seen" },
      }),
      step("vent", "iv", 1, ask),
      step("test", "iv", 2, { after: [{ step: "vent", lag: "PT10M" }] }),
      step("drill", "ev1", 5, { when: { bolt: "stuck" } }),
      step("look", "ev2", 2, { within: ["light"] }),
    ]),
    task("spare", [step("extra", "ev1", 3)], { priority: "get-ahead" }),
  ],
  {
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
      { id: "ev2", call: "EV2", station: "inside" },
      { id: "iv", call: "IV", station: "inside" },
    ],
    places: [{ id: "hatch", refuge: true }, { id: "boom" }],
    routes: [{ between: ["hatch", "boom"], length: 20, time: "PT4M" }],
    windows: [{ id: "light", kind: "daylight", spans: [{ from: "PT20M", to: "PT60M" }] }],
    limits: { elapsed: "PT30M" },
  },
);

function reviewed(log: LogWriter, at = 90): Review {
  const review = reviewOf(log.folded, minute(at));
  if (!review) throw new Error("no walk was opened");
  return review;
}

const waitsOf = (review: Review, id: string) => plainWaits(stepOf(review, id).waits);

const stepOf = (review: Review, id: string) => {
  const one = review.steps[review.outline.step(id)?.index ?? -1];
  if (!one) throw new Error(`no step ${id}`);
  return one;
};

/** A walk that went otherwise than planned in every way there is. */
const eventful = () =>
  LogWriter.started(FILE)
    .done(["b1", 2])
    .enter("note.made", { text: "Slow at the corner.", step: "walk-out" }, 3)
    .done(["walk-out", 6])
    .enter("record.taken", { step: "meet", record: "turns", value: 8 }, 8)
    .enter("confirm.given", { step: "meet" }, 9)
    .done(["meet", 9], ["vent", 3])
    .strike(0, 4)
    .done(["vent", 4])
    .enter("hold.called", { reason: "comm" }, 10)
    .enter("note.made", { text: "Ground asked for a pause." }, 11)
    .enter("hold.lifted", {}, 12)
    .enter("step.skipped", { step: "extra", reason: "no time" }, 13)
    .done(["test", 17], ["look", 23])
    .enter("step.reopened", { step: "look", reason: "missed a corner" }, 24)
    .done(["look", 25])
    .enter("walk.closed", { end: "terminated", reason: "weather" }, 26);

describe("the review of a step", () => {
  it("[REV1] has planned and actual times, and their differences as actual − planned", () => {
    const review = reviewed(eventful());
    const brief = (id: string) => {
      const { planned, actual, startDifference, finishDifference, timeDifference } = stepOf(review, id);
      const all = [
        planned?.start,
        planned?.finish,
        actual?.start,
        actual?.finish,
        startDifference,
        finishDifference,
        timeDifference,
      ];
      return all.map((one) => (one == null ? null : inMinutes(one)));
    };
    expect(brief("walk-out")).toEqual([0, 4, 0, 6, 0, 2, 2]);
    expect(brief("b1")).toEqual([0, 3, 0, 2, 0, -1, -1]);
    expect(brief("meet")).toEqual([4, 6, 6, 9, 2, 3, 1]);
    expect(brief("test")).toEqual([11, 13, 14, 17, 3, 4, 1]);
    // Not in the plan: a branch that was not expected, a get-ahead.
    expect(brief("drill")).toEqual([null, null, null, null, null, null, null]);
    expect(brief("extra")).toEqual([null, null, 13, 13, null, null, null]);
  });

  it("[REV1] says how it ended", () => {
    const review = reviewed(eventful());
    expect(review.steps.map(({ ending }) => ending)).toEqual([
      "done",
      "done",
      "done",
      "done",
      "done",
      "not-performed",
      "done",
      "skipped",
    ]);
    expect(stepOf(review, "extra").skipReason).toBe("no time");
    const early = reviewed(LogWriter.started(FILE).done(["b1", 2]), 3);
    expect(early.steps.map(({ ending }) => ending)).toEqual([
      "in-work",
      "done",
      "open",
      "in-work",
      "open",
      "not-performed",
      "open",
      "open",
    ]);
    const outOfOrder = LogWriter.started(FILE).enter("step.done", { step: "meet", outOfOrder: true }, 3);
    expect(stepOf(reviewed(outOfOrder), "meet").outOfOrder).toBe(true);
  });

  it("[REV1] names whom or what each performer waited for, and how long", () => {
    const review = reviewed(eventful());
    expect(waitsOf(review, "meet")).toEqual([
      { crew: "ev2", time: 4 * 60_000, on: { crew: ["ev1"], step: "walk-out" } },
    ]);
    expect(waitsOf(review, "test")).toEqual([{ crew: "iv", time: 10 * 60_000, on: { lag: "vent" } }]);
    // Free at 9; the window opened at 20, and from 10 to 12 the hold kept everything from starting.
    expect(waitsOf(review, "look")).toEqual([
      { crew: "ev2", time: 60_000, on: { window: "light" } },
      { crew: "ev2", time: 2 * 60_000, on: { hold: true } },
      { crew: "ev2", time: 8 * 60_000, on: { window: "light" } },
    ]);
  });

  it("[REV1] [WLK5] counts waiting for a decision as waiting for whoever makes it", () => {
    const file = fileWith([step("ask", "ev1", 2, ask), step("free", "ev2", 3, { when: { bolt: "free" } })]);
    const log = LogWriter.started(file)
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 4)
      .done(["ask", 4], ["free", 8]);
    const review = reviewed(log);
    expect(stepOf(review, "free").actual).toMatchObject({ start: 4 * 60_000, finish: 8 * 60_000 });
    expect(waitsOf(review, "free")).toEqual([
      { crew: "ev2", time: 4 * 60_000, on: { crew: ["ev1"], step: "ask" } },
    ]);
  });

  it("[REV1] has its records, confirmation, notes, strikes and reopenings", () => {
    const review = reviewed(eventful());
    expect(stepOf(review, "meet")).toMatchObject({
      records: [
        {
          record: "turns",
          label: "Turns",
          min: 6,
          max: 7,
          taken: [{ value: 8, actor: "iv", outOfRange: true }],
        },
      ],
      confirm: { by: "iv", text: "Seen", given: { at: minute(9), actor: "iv" } },
    });
    expect(stepOf(review, "walk-out").notes.map(({ text }) => text)).toEqual(["Slow at the corner."]);
    expect(stepOf(review, "vent").struck).toMatchObject([
      { what: "step.done", at: minute(3), struckAt: minute(4), struckBy: "iv" },
    ]);
    expect(stepOf(review, "look").reopened).toEqual([{ at: minute(24), reason: "missed a corner" }]);
    const asked = reviewed(LogWriter.started(FILE));
    expect(stepOf(asked, "meet")).toMatchObject({ records: [{ taken: [] }], confirm: { given: null } });
  });
});

describe("the review of a lane", () => {
  it("[REV1] divides its time into work, translation, waits by whom, and idleness", () => {
    const [ev1, ev2, iv] = reviewed(eventful()).lanes.map(
      ({ until, worked, translated, waited, idle, done, skipped }) => ({
        times: [until, worked, translated, idle].map(inMinutes),
        waited: waited.map(({ on, time }) => [on, inMinutes(time)]),
        done,
        skipped,
      }),
    );
    expect(ev1).toEqual({ times: [9, 3, 6, 0], waited: [], done: 2, skipped: 1 });
    // Two steps, the second reopened from 20 to 25; the window closed for nine minutes besides the hold.
    expect(ev2).toEqual({
      times: [25, 10, 0, 0],
      waited: [
        ["window", 9],
        [{ crew: ["ev1"] }, 4],
        ["hold", 2],
      ],
      done: 3,
      skipped: 0,
    });
    expect(iv).toEqual({ times: [17, 7, 0, 0], waited: [["lag", 10]], done: 2, skipped: 0 });
  });

  it("[REV1] counts a step in work up to now", () => {
    const [ev1] = reviewed(LogWriter.started(FILE), 3).lanes;
    expect(ev1).toMatchObject({ until: 180_000, translated: 180_000, worked: 0, done: 0 });
  });
});

describe("the review of tasks and of the whole", () => {
  it("[REV1] sets each task's plan against what it came to", () => {
    const [go, work, spare] = reviewed(eventful()).tasks;
    expect(go).toMatchObject({
      planned: { start: 0, finish: 240_000, crewTime: 420_000 },
      actual: { start: 0, finish: 360_000, crewTime: 480_000 },
      startDifference: 0,
      finishDifference: 120_000,
      timeDifference: 120_000,
      crewTimeDifference: 60_000,
      done: 2,
      of: 2,
    });
    expect(work).toMatchObject({ done: 4, skipped: 0, of: 4 });
    expect(spare).toMatchObject({
      getAhead: true,
      planned: null,
      actual: null,
      timeDifference: null,
      skipped: 1,
      of: 1,
    });
  });

  it("[REV1] sets the finish against plan and limit, and lists holds, decisions, notes, strikes and deviations", () => {
    const review = reviewed(eventful());
    expect(
      [review.plannedFinish, review.actualFinish, review.finishDifference, review.limit, review.margin].map(
        (one) => inMinutes(one ?? -1),
      ),
    ).toEqual([22, 25, 3, 30, 4]);
    expect(review.end).toEqual({ end: "terminated", reason: "weather", at: 26 * 60_000 });
    expect(review.holds).toEqual([{ start: 600_000, finish: 720_000, reason: "comm", lifted: true }]);
    expect(review.notes.map(({ text }) => text)).toEqual(["Ground asked for a pause."]);
    expect(review.struck).toHaveLength(1);
    expect(review.deviations.map(({ kind }) => kind)).toEqual(["record-out-of-range", "struck"]);
    expect(review.until).toBe(minute(26));
    const stuck = LogWriter.started(FILE).enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 1);
    expect(reviewed(stuck).decisions).toEqual([{ decision: "bolt", outcome: "stuck", expected: false }]);
  });

  it("[REV1] of a walk without an opening, or whose clock was never started, is none or empty", () => {
    expect(reviewOf(foldLog([]), minute(0))).toBeNull();
    const review = reviewed(LogWriter.opened(FILE));
    expect(review).toMatchObject({ petZero: null, end: null, actualFinish: null, margin: null });
    expect(review.lanes.every(({ until, idle }) => until === 0 && idle === 0)).toBe(true);
  });

  it("[WRD1] says what entries carry as codes as it says what somebody wrote", () => {
    const said = (
      reason: { stuck: true } | { reason: string },
      struck: { undone: true } | { reason: string },
    ) => {
      const log = LogWriter.started(FILE).enter("note.made", { text: "Wrong." }, 1);
      const { source, id } = log.entries.at(-1)?.wire ?? { source: "", id: "" };
      log.enter("entry.struck", { source, id, ...struck }, 2);
      return reviewDocument(reviewed(log.enter("walk.closed", { end: "terminated", ...reason }, 3)), inWords);
    };
    const coded = said({ stuck: true }, { undone: true });
    expect(coded).toEqual(said({ reason: "No lane could go on." }, { reason: "undone" }));
    expect(coded.end?.reason).toBe("No lane could go on.");
    expect(coded.struck.map(({ reason }) => reason)).toEqual(["undone"]);
    expect(coded.deviations.map(({ text }) => text)).toEqual(["Undone: a note"]);
  });

  it("[REV1] has a JSON document in seconds", () => {
    const document = reviewDocument(reviewed(eventful()), inWords);
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    expect(document.finish).toEqual({
      planned: 1320,
      inForce: 1320,
      actual: 1500,
      difference: 180,
      limit: 1800,
      margin: 240,
    });
    expect(document.steps[2]).toMatchObject({
      step: "meet",
      number: "2.1",
      planned: { start: 240, finish: 360, time: 120 },
      actual: { start: 360, finish: 540, time: 180 },
      difference: { start: 120, finish: 180, time: 60 },
      waits: [{ crew: "ev2", seconds: 240, on: { crew: ["ev1"], step: "walk-out" } }],
    });
    expect(document.petZero).toBe("2031-04-02T09:00:00.000Z");
  });

  it("[REV2] is the same from the exported log", () => {
    const { entries } = eventful();
    const imported = foldLog(readLines(writeLines(entries)).entries);
    const folded = foldLog(entries);
    expect(stateDocument(imported, minute(26), inWords)).toEqual(stateDocument(folded, minute(26), inWords));
    const [again, first] = [imported, folded].map((one) => reviewOf(one, minute(26)));
    expect(again && reviewDocument(again, inWords)).toEqual(first && reviewDocument(first, inWords));
  });
});

describe("any review", () => {
  const taps = fc.array(
    fc.tuple(
      fc.constantFrom("walk-out", "b1", "meet", "vent", "test", "look", "extra"),
      fc.nat({ max: 8 }),
      fc.constantFrom(
        "step.done",
        "step.done",
        "step.done",
        "step.skipped",
        "step.reopened",
        "hold.called",
        "hold.lifted",
      ),
      fc.boolean(),
    ),
    { maxLength: 20 },
  );
  test.prop([taps, fc.nat({ max: 20 })])(
    "[REV1] accounts for every minute of every lane, once",
    (tapped, later) => {
      const log = LogWriter.started(FILE);
      let now = 0;
      for (const [id, pause, name, outOfOrder] of tapped) {
        now += pause;
        if (name === "step.done") log.enter("step.done", { step: id, outOfOrder }, now);
        else if (name === "hold.called" || name === "hold.lifted") log.enter(name, {}, now);
        else log.enter(name as "step.skipped", { step: id, reason: "" }, now);
      }
      const review = reviewed(log, now + later);
      for (const { until, worked, translated, waited, idle } of review.lanes) {
        const waiting = waited.reduce((sum, { time }) => sum + time, 0);
        expect(worked + translated + waiting + idle).toBe(until);
        expect(Math.min(worked, translated, idle, ...waited.map(({ time }) => time))).toBeGreaterThanOrEqual(
          0,
        );
      }
      for (const { waits } of review.steps) {
        for (const { on } of waits) if ("crew" in on) expect(on.crew.length).toBeGreaterThan(0);
      }
    },
  );
});
