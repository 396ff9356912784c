import { describe, expect, it } from "vitest";
import type { ItemId, StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import type { Ledger } from "../../../src/core/walk/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, progressInOrder, ZERO } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const TWO = fileWith([
  step("a1", "ev1", 5),
  step("a2", "ev1", 4),
  step("b1", "ev2", 3),
  step("meet", ["ev1", "ev2"], 2),
  step("c1", "iv", 2, { after: [{ step: "b1", lag: "PT6M" }] }),
]);

/** Status, start and finish in minutes of PET. */
function progressOf(ledger: Ledger, id: string) {
  const progress = ledger.steps.get(id as StepId);
  const inPet = (at: number | null | undefined) => (at == null ? null : inMinutes(at - ZERO));
  return [progress?.status, inPet(progress?.start), inPet(progress?.finish)];
}

describe("the steps of a walk", () => {
  it("[WLK2] [PRO2] are taken as started as soon as performers, predecessors and lags let them", () => {
    const log = LogWriter.started(TWO).done(["a1", 6], ["b1", 7], ["a2", 11], ["meet", 14], ["c1", 16]);
    expect(log.reasons).toEqual([]);
    const { ledger } = log;
    expect(progressOf(ledger, "a1")).toEqual(["done", 0, 6]);
    expect(progressOf(ledger, "a2")).toEqual(["done", 6, 11]);
    expect(progressOf(ledger, "b1")).toEqual(["done", 0, 7]);
    expect(progressOf(ledger, "meet")).toEqual(["done", 11, 14]);
    expect(progressOf(ledger, "c1")).toEqual(["done", 13, 16]);
  });

  it("[WLK2] are taken as started when a `step.started` says, and not later than they were done", () => {
    const log = LogWriter.started(TWO).enter("step.started", { step: "a1" }, 2).done(["a1", 6]);
    expect(progressOf(log.ledger, "a1")).toEqual(["done", 2, 6]);
    const early = LogWriter.started(TWO).done(["b1", 1], ["c1", 4]);
    expect(progressOf(early.ledger, "c1")).toEqual(["done", 4, 4]);
  });

  it("[WLK2] are taken as started when a window opens", () => {
    const file = fileWith([step("a", "ev1", 3, { within: ["contact"] })], {
      windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT10M", to: "PT20M" }] }],
    });
    expect(progressOf(LogWriter.started(file).done(["a", 15]).ledger, "a")).toEqual(["done", 10, 15]);
    expect(progressOf(LogWriter.started(file).done(["a", 4]).ledger, "a")).toEqual(["done", 4, 4]);
  });

  it("[WLK2] start after every hold that follows on another, not at the end of the first", () => {
    const log = LogWriter.started(TWO)
      .enter("hold.called", {}, 1)
      .done(["a1", 2])
      .enter("hold.lifted", {}, 5)
      .enter("hold.called", {}, 5)
      .enter("hold.lifted", {}, 8)
      .done(["a2", 10]);
    expect(progressOf(log.ledger, "a2")).toEqual(["done", 8, 10]);
  });

  it("[WLK2] start after a hold, not during it", () => {
    const log = LogWriter.started(TWO)
      .done(["a1", 5])
      .enter("hold.called", { reason: "comm" }, 5)
      .enter("hold.lifted", {}, 25)
      .done(["a2", 30]);
    expect(progressOf(log.ledger, "a2")).toEqual(["done", 25, 30]);
  });

  it("[WLK2] when skipped count as complete at the time of the skip, and let others go then", () => {
    const log = LogWriter.started(TWO)
      .enter("step.skipped", { step: "b1", reason: "no need" }, 4)
      .done(["a1", 5], ["a2", 9], ["meet", 12], ["c1", 13]);
    expect(log.reasons).toEqual([]);
    expect(progressOf(log.ledger, "b1")).toEqual(["skipped", 4, 4]);
    expect(progressOf(log.ledger, "c1")).toEqual(["done", 10, 13]);
    expect(log.deviations).toMatchObject([{ kind: "skipped", step: "b1", text: "Skipped: no need" }]);
  });

  it("[PRO9] of a get-ahead may be skipped without a deviation", () => {
    const file = fileWith([
      task("main", [step("a", "ev1", 5)]),
      task("spare", [step("x", "ev1", 7)], { priority: "get-ahead" }),
    ]);
    const log = LogWriter.started(file).done(["a", 5]).enter("step.skipped", { step: "x" }, 5);
    expect(log.folded.deviations).toEqual([]);
    expect(log.ledger.lanes[0]?.status).toBe("finished");
  });

  it("[WLK2] [PRO8] move their items when they are done, with what is in them", () => {
    const file = fileWith(
      [step("hand", ["ev1", "ev2"], 1, { moves: [{ item: "bag", to: { crew: "ev2" } }] })],
      {
        items: [
          { id: "bag", start: { crew: "ev1" } },
          { id: "wrench", start: { item: "bag" } },
        ],
      },
    );
    const log = LogWriter.started(file);
    expect(log.ledger.custody.get("bag" as ItemId)).toEqual({ crew: "ev1" });
    log.done(["hand", 1]);
    expect(log.ledger.custody.get("bag" as ItemId)).toEqual({ crew: "ev2" });
    expect(log.ledger.custody.get("wrench" as ItemId)).toEqual({ item: "bag" });
    log.enter("step.reopened", { step: "hand", reason: "slip" }, 2);
    expect(log.ledger.custody.get("bag" as ItemId)).toEqual({ crew: "ev1" });
  });

  it("[LOG4] have no effect when already complete, unknown, not performed or not let, and say why", () => {
    const log = LogWriter.started(TWO).done(["a1", 5], ["a1", 6], ["nowhere", 6], ["meet", 7], ["c1", 7]);
    log.enter("step.skipped", { step: "a1" }, 8).enter("step.reopened", { step: "a2", reason: "" }, 8);
    log.enter("step.started", { step: "a1" }, 8).enter("step.started", { step: "meet" }, 8);
    expect(log.reasons).toEqual([
      '"a1" is already done',
      'there is no step "nowhere"',
      '"meet" comes after "a2", which is not complete',
      '"c1" comes after "b1", which is not complete',
      '"a1" is already done',
      '"a2" is open',
      '"a1" is already complete',
      '"meet" cannot have started: "a2" is not complete',
    ]);
    expect(log.folded.entries).toHaveLength(log.entries.length);
  });

  it("[WLK4] are accepted out of order only when the entry says so, and marked as deviations", () => {
    const log = LogWriter.started(TWO)
      .done(["meet", 3])
      .enter("step.done", { step: "meet", outOfOrder: true }, 4);
    expect(log.reasons).toEqual(['"meet" comes after "a1", which is not complete']);
    expect(progressInOrder(log.ledger)[3]).toMatchObject({ status: "done", outOfOrder: true });
    expect(log.deviations).toMatchObject([{ kind: "out-of-order", step: "meet", text: 'Done before "a1"' }]);
    log.done(["a1", 5], ["a2", 9], ["b1", 9]);
    expect(log.ledger.lanes.map(({ status }) => status)).toEqual(["finished", "finished", "waiting"]);
    expect(progressOf(log.ledger, "a2")).toEqual(["done", 5, 9]);
  });

  it("[WLK4] are no deviation when `outOfOrder` is said of a step that is in order", () => {
    const log = LogWriter.started(TWO).enter("step.done", { step: "a1", outOfOrder: true }, 4);
    expect(progressInOrder(log.ledger)[0]?.outOfOrder).toBe(false);
    expect(log.folded.deviations).toEqual([]);
  });

  it("reopened are in work again from their first start, with their deviations gone", () => {
    const log = LogWriter.started(TWO)
      .done(["a1", 5], ["a2", 9])
      .enter("step.reopened", { step: "a1", reason: "not seated" }, 10);
    const state = walkStateAt(log.ledger, minute(11));
    expect(state.lanes[0]).toMatchObject({ status: "working", step: "a1", done: 1, of: 3 });
    log.done(["a1", 12]);
    expect(progressOf(log.ledger, "a1")).toEqual(["done", 0, 12]);
    expect(log.ledger.lanes[0]).toMatchObject({ next: "meet", free: minute(12) });

    const skipped = LogWriter.started(TWO)
      .enter("step.skipped", { step: "a1" }, 3)
      .enter("step.reopened", { step: "a1", reason: "" }, 4);
    expect(skipped.folded.deviations).toEqual([]);
    expect(progressOf(skipped.done(["a1", 9]).ledger, "a1")).toEqual(["done", 4, 9]);
  });

  it("reopened must be confirmed again, and keep the records taken", () => {
    const file = fileWith([
      step("a", "ev1", 5, { confirm: { by: "iv", text: "Seated" }, records: [{ id: "turns" }] }),
    ]);
    const log = LogWriter.started(file)
      .enter("record.taken", { step: "a", record: "turns", value: 6 }, 4)
      .enter("confirm.given", { step: "a" }, 4)
      .done(["a", 5])
      .enter("step.reopened", { step: "a", reason: "loose" }, 6);
    expect(progressInOrder(log.ledger)[0]).toMatchObject({ confirmed: null, records: [{ value: 6 }] });
    log.enter("confirm.given", { step: "a" }, 7);
    expect(log.reasons).toEqual([]);
    expect(progressInOrder(log.ledger)[0]?.confirmed).toEqual({ at: minute(7), actor: "iv" });
  });
});

describe("records and confirmations", () => {
  const file = fileWith([
    step("a", "ev1", 5, {
      confirm: { by: "iv", text: "Seated" },
      records: [
        { id: "turns", label: "Turns", min: 6, max: 7 },
        { id: "torque", unit: "N.m", min: 10 },
      ],
    }),
    step("b", "ev1", 5),
  ]);

  it("[WLK7] are taken outside min..max, flagged, and listed as deviations", () => {
    const log = LogWriter.started(file)
      .enter("record.taken", { step: "a", record: "turns", value: 7 }, 1)
      .enter("record.taken", { step: "a", record: "turns", value: 8 }, 2)
      .enter("record.taken", { step: "a", record: "torque", value: 9.5 }, 3);
    expect(
      progressInOrder(log.ledger)[0]?.records.map(({ value, outOfRange }) => [value, outOfRange]),
    ).toEqual([
      [7, false],
      [8, true],
      [9.5, true],
    ]);
    expect(log.deviations.map(({ kind, step: id, text }) => [kind, id, text])).toEqual([
      ["record-out-of-range", "a", "Turns: 8 is above 7"],
      ["record-out-of-range", "a", "torque: 9.5 N·m is below 10 N·m"],
    ]);
  });

  it("[WLK7] may be taken after the step is done", () => {
    const log = LogWriter.started(file)
      .done(["a", 5])
      .enter("record.taken", { step: "a", record: "turns", value: 6 }, 9);
    expect(progressInOrder(log.ledger)[0]?.records).toHaveLength(1);
  });

  it("[LOG4] have no effect where the step asks for none", () => {
    const log = LogWriter.started(file)
      .enter("record.taken", { step: "a", record: "angle", value: 1 }, 1)
      .enter("confirm.given", { step: "b" }, 1)
      .enter("confirm.given", { step: "a" }, 1)
      .enter("confirm.given", { step: "a" }, 2);
    expect(log.reasons).toEqual([
      '"a" has no record "angle"',
      '"b" asks for no confirmation',
      '"a" is already confirmed',
    ]);
  });
});
