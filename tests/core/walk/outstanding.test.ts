import { describe, expect, it } from "vitest";
import { reviewCsv, reviewOf } from "../../../src/core/review/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { deviationsAt, outstandingOf, stateDocument, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const RECORD = { id: "pressure", label: "Pressure", unit: "kPa", min: 27, max: 32 };
const FILE = fileWith(
  [
    step("read", "ev1", 5, { records: [RECORD, { id: "count" }], confirm: { by: "iv", text: "Heard it" } }),
    step("vent", "ev2", 5),
    step("open", "ev2", 5, { after: [{ step: "vent", lag: "PT20M" }] }),
    step("call", "iv", 2, { within: ["contact"] }),
    step("end", "iv", 2),
  ],
  { windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT60M", to: "PT70M" }] }] },
);

/** What is outstanding at a minute of PET: kind, step, since when and until when. */
function owedAt(log: LogWriter, at: number) {
  return outstandingOf(walkStateAt(log.ledger, minute(at))).map(({ kind, step: id, since, until }) => [
    kind,
    id,
    inMinutes(since),
    until === null ? null : inMinutes(until),
  ]);
}

/** The deviations at a minute of PET: kind, step, words. */
const deviationsIn = (log: LogWriter, at: number) =>
  deviationsAt(log.folded, walkStateAt(log.ledger, minute(at))).map(({ kind, step: id, text }) => [
    kind,
    id,
    inWords(text),
  ]);

describe("what is outstanding", () => {
  it("[OFF2] is nothing before the clock is started, nor of steps that are open or skipped", () => {
    expect(owedAt(LogWriter.opened(FILE), 1)).toEqual([]);
    const log = LogWriter.started(FILE).enter("step.skipped", { step: "read", reason: "late" }, 4);
    expect(owedAt(log, 5)).toEqual([]);
  });

  it("[OFF2] is each record and confirmation of a done step until it comes, and a deviation as long", () => {
    const log = LogWriter.started(FILE).done(["read", 5]);
    expect(owedAt(log, 6)).toEqual([
      ["record-not-taken", "read", 5, null],
      ["record-not-taken", "read", 5, null],
      ["confirmation-not-given", "read", 5, null],
    ]);
    expect(deviationsIn(log, 6)).toEqual([
      ["record-not-taken", "read", "Pressure was not taken"],
      ["record-not-taken", "read", "count was not taken"],
      ["confirmation-not-given", "read", "IV has not confirmed it"],
    ]);
    log
      .enter("record.taken", { step: "read", record: "pressure", value: 29 }, 7)
      .enter("record.taken", { step: "read", record: "count", value: 3 }, 7)
      .enter("confirm.given", { step: "read" }, 8);
    expect(owedAt(log, 9)).toEqual([]);
    expect(deviationsIn(log, 9)).toEqual([]);
    log.strike(0, 10);
    expect(owedAt(log, 11)).toEqual([["confirmation-not-given", "read", 5, null]]);
  });

  it("[OFF2] is a value outside its limits until a later one is within; then its deviation is history", () => {
    const log = LogWriter.started(FILE)
      .enter("record.taken", { step: "read", record: "pressure", value: 26.5 }, 4)
      .enter("record.taken", { step: "read", record: "count", value: 3 }, 4)
      .enter("confirm.given", { step: "read" }, 4)
      .done(["read", 5]);
    expect(owedAt(log, 6)).toEqual([["record-out-of-range", "read", 4, null]]);
    expect(deviationsIn(log, 6)).toEqual([
      ["record-out-of-range", "read", "Pressure: 26.5 kPa is below 27 kPa"],
    ]);
    log.enter("record.taken", { step: "read", record: "pressure", value: 28 }, 7);
    expect(owedAt(log, 8)).toEqual([]);
    expect(deviationsIn(log, 8)).toEqual([
      ["record-corrected", "read", "Pressure: 26.5 kPa is below 27 kPa; taken again within its limits: 28"],
    ]);
    log.enter("record.taken", { step: "read", record: "pressure", value: 33 }, 9);
    expect(owedAt(log, 10)).toEqual([["record-out-of-range", "read", 9, null]]);
    expect(deviationsIn(log, 10).map(([kind]) => kind)).toEqual(["record-corrected", "record-out-of-range"]);
  });

  it("[OFF2] is a lag until it is over, and remains a deviation", () => {
    const log = LogWriter.started(FILE).done(["vent", 5], ["open", 10]);
    expect(owedAt(log, 11)).toEqual([["lag-not-over", "open", 10, 25]]);
    expect(owedAt(log, 25)).toEqual([]);
    expect(deviationsIn(log, 30)).toEqual([
      ["lag-not-over", "open", 'Done before the time after "vent" was over'],
    ]);
    const inTime = LogWriter.started(FILE).done(["vent", 5], ["open", 25]);
    expect(deviationsIn(inTime, 30)).toEqual([]);
    log.enter("step.reopened", { step: "open", reason: "too early" }, 12);
    expect(deviationsIn(log, 13)).toEqual([]);
  });

  it("[OFF2] [PRO17] is the PET before which a step does not start, and remains a deviation", () => {
    const set = fileWith([step("call", "iv", 2, { notBefore: "PT20M" })], {
      format: "tetherline.procedure/2",
    });
    const log = LogWriter.started(set).done(["call", 12]);
    expect(owedAt(log, 13)).toEqual([["time-not-reached", "call", 12, 20]]);
    expect(owedAt(log, 20)).toEqual([]);
    expect(deviationsIn(log, 21)).toEqual([
      ["time-not-reached", "call", "Done before the PET before which it does not start"],
    ]);
    expect(deviationsIn(LogWriter.started(set).done(["call", 20]), 21)).toEqual([]);
    log.enter("step.reopened", { step: "call", reason: "too early" }, 22);
    expect(deviationsIn(log, 23)).toEqual([]);
  });

  it("[OFF2] is a window until it lets the step; one that does not come again is a deviation only", () => {
    const log = LogWriter.started(FILE).done(["call", 30]);
    expect(owedAt(log, 31)).toEqual([["window-not-over", "call", 30, 60]]);
    expect(owedAt(log, 60)).toEqual([]);
    expect(deviationsIn(log, 61)).toEqual([
      ["window-not-over", "call", 'Done before the window "contact" let it'],
    ]);
    const late = fileWith([step("a", "iv", 75), step("call", "iv", 2, { within: ["contact"] })], {
      windows: FILE.windows,
    });
    const past = LogWriter.started(late).done(["a", 75], ["call", 80]);
    expect(owedAt(past, 81)).toEqual([]);
    expect(deviationsIn(past, 81)).toEqual([
      ["window-not-over", "call", 'Done outside the window "contact"'],
    ]);
  });

  it("[OFF2] is a hold in which a step was begun and done, until it is lifted", () => {
    const log = LogWriter.started(FILE)
      .done(["vent", 5])
      .enter("hold.called", { reason: "comm" }, 10)
      .done(["open", 26]);
    expect(owedAt(log, 27)).toEqual([["hold-not-over", "open", 26, null]]);
    log.enter("hold.lifted", {}, 28);
    expect(owedAt(log, 29)).toEqual([]);
    expect(deviationsIn(log, 29)).toEqual([["hold-not-over", "open", "Done during a hold"]]);
  });

  it("[OFF2] is the reason of a step done out of order, until it is given with it or in a note", () => {
    const order = fileWith([step("go", "iv", 5), step("hatch", "ev1", 5, { after: ["go"] })]);
    const mark = { step: "hatch", outOfOrder: true };
    const given = LogWriter.started(order).enter("step.done", { ...mark, reason: "leak" }, 2);
    expect(owedAt(given, 3)).toEqual([]);
    expect(deviationsIn(given, 3)).toEqual([["out-of-order", "hatch", 'Done before "go": leak']]);
    const log = LogWriter.started(order)
      .enter("note.made", { text: "before", step: "hatch" }, 1)
      .enter("step.done", mark, 2);
    expect(owedAt(log, 3)).toEqual([["reason-not-given", "hatch", 2, null]]);
    log.enter("note.made", { text: "leak", step: "hatch" }, 4);
    expect(owedAt(log, 5)).toEqual([]);
  });

  it("[OFF2] is the last round of a watch until it is kept; a round that was missed remains a deviation", () => {
    const watched = fileWith([step("out", "ev1", 10), step("in", "ev1", 10)], {
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", from: "out", until: "in", every: "PT30M" }],
    });
    const log = LogWriter.started(watched).done(["out", 10]);
    expect(owedAt(log, 39)).toEqual([]);
    expect(owedAt(log, 40)).toEqual([["watch-not-kept", null, 40, null]]);
    log.enter("watch.kept", { watch: "gloves", due: 40 * 60 }, 45);
    expect(owedAt(log, 46)).toEqual([]);
    expect(owedAt(log, 101)).toEqual([["watch-not-kept", null, 100, null]]);
    expect(deviationsIn(log, 101)).toEqual([
      ["watch-not-kept", null, "Not kept since 1:10:00: Check gloves"],
      ["watch-not-kept", null, "Not kept since 1:40:00: Check gloves"],
    ]);
    log.enter("watch.kept", { watch: "gloves", due: 70 * 60 }, 102);
    expect(deviationsIn(log, 103)).toEqual([]);
    log.enter("watch.kept", { watch: "gloves", due: 100 * 60 }, 104).done(["in", 130]);
    expect(owedAt(log, 200)).toEqual([]);
    expect(deviationsIn(log, 200)).toEqual([]);
  });

  it("[OFF2] is what a step has to count off, each by itself, and again when it is reopened", () => {
    const counting = fileWith([step("clamps", "ev1", 5, { check: ["Clamp 1", "Clamp 2", "Clamp 3"] })], {
      format: "tetherline.procedure/2",
    });
    const log = LogWriter.started(counting)
      .enter("check.counted", { step: "clamps", check: 1 }, 2)
      .enter("check.counted", { step: "clamps", check: 1 }, 3)
      .enter("check.counted", { step: "clamps", check: 3 }, 3)
      .done(["clamps", 5]);
    expect(log.reasons).toEqual([
      'that of "clamps" is already counted off',
      '"clamps" has nothing there to count off',
    ]);
    expect(owedAt(log, 6)).toEqual([["check-not-counted", "clamps", 5, null]]);
    expect(deviationsIn(log, 6)).toEqual([
      ["check-not-counted", "clamps", "Not counted off: Clamp 1 and Clamp 3"],
    ]);
    for (const check of [0, 2]) log.enter("check.counted", { step: "clamps", check }, 7);
    expect(owedAt(log, 8)).toEqual([]);
    log.enter("step.reopened", { step: "clamps", reason: "loose" }, 9).done(["clamps", 10]);
    expect(owedAt(log, 11)).toEqual([["check-not-counted", "clamps", 10, null]]);
  });

  it("[OFF2] of a branch that was left is not owed any more", () => {
    const branched = fileWith([
      task("main", [
        step("ask", "iv", 1, {
          decide: { id: "way", ask: "Which?", outcomes: ["left", "right"], expect: "left" },
        }),
        step("left", "iv", 1, { when: { way: "left" }, records: [{ id: "count" }] }),
      ]),
    ]);
    const log = LogWriter.started(branched)
      .enter("decision.taken", { decision: "way", outcome: "left" }, 1)
      .done(["ask", 1], ["left", 2]);
    expect(owedAt(log, 3)).toEqual([["record-not-taken", "left", 2, null]]);
    log.enter("decision.taken", { decision: "way", outcome: "right" }, 4);
    expect(owedAt(log, 5)).toEqual([]);
  });

  it("[OFF2] stands in the state, and after closing in the review, whose table tells it from what is not needed", () => {
    const log = LogWriter.started(FILE).done(["read", 5], ["vent", 5]);
    const document = stateDocument(log.folded, minute(6), inWords);
    expect(document?.outstanding.map(({ kind, step: id, of, since }) => [kind, id, of, since])).toEqual([
      ["record-not-taken", "read", "pressure", 300],
      ["record-not-taken", "read", "count", 300],
      ["confirmation-not-given", "read", null, 300],
    ]);
    expect(document?.deviations.map(({ kind }) => kind)).toEqual([
      "record-not-taken",
      "record-not-taken",
      "confirmation-not-given",
    ]);
    log.enter("walk.closed", { end: "terminated" }, 9);
    const review = reviewOf(log.folded, minute(500));
    if (!review) throw new Error("the walk was opened");
    expect(review.deviations).toHaveLength(3);
    const [heading = "", ...rows] = reviewCsv(review, inWords).trim().split("\r\n");
    const column = heading.split(",").indexOf("confirmed_by");
    expect(rows.map((row) => row.split(",")[column])).toEqual([
      "missing",
      "not needed",
      "not needed",
      "not needed",
      "not needed",
    ]);
  });
});
