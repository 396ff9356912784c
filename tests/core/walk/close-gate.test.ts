import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { closeGateOf, stateValuesOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const PLACES: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "ev2", call: "EV2", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "site" }],
  routes: [{ between: ["lock", "site"], length: 4, time: "PT2M" }],
  items: [
    { id: "bag", start: { crew: "ev1" }, end: { place: "lock" } },
    { id: "lamp", start: { item: "bag" } },
  ],
};
const FILE = fileWith(
  [
    task("main", [
      step("out", "ev1", 2, { to: "site" }),
      step("work", "ev1", 5, {
        at: "site",
        moves: [{ item: "lamp", to: { place: "site" } }],
        records: [{ id: "n" }],
      }),
      step("in", "ev1", 2, { to: "lock", moves: [{ item: "bag", to: { place: "lock" } }] }),
      step("watch", "ev2", 5),
    ]),
    task("spare", [step("extra", "ev2", 5)], { priority: "get-ahead" }),
  ],
  PLACES,
);

function gateAt(log: LogWriter, at: number) {
  const gate = closeGateOf(walkStateAt(log.ledger, minute(at)));
  return {
    outside: gate.outside.map(({ crew, place }) => [crew, place]),
    items: gate.items.map(({ item }) => item.id),
    undone: gate.undone,
    outstanding: gate.outstanding.map(({ kind }) => kind),
    mayBeComplete: gate.mayBeComplete,
  };
}

describe("the close gate", () => {
  it("[OFF5] tells who is out, what is left, misplaced and outstanding, by name", () => {
    const log = LogWriter.started(FILE).done(["out", 2], ["work", 7]);
    expect(gateAt(log, 8)).toEqual({
      outside: [["ev1", "site"]],
      items: ["bag", "lamp"],
      undone: ["in", "watch"],
      outstanding: ["record-not-taken"],
      mayBeComplete: false,
    });
    log
      .done(["in", 9], ["watch", 9])
      .enter("record.taken", { step: "work", record: "n", value: 1 }, 10)
      .enter("item.moved", { item: "lamp", to: { item: "bag" }, reason: "found" }, 10);
    expect(gateAt(log, 11)).toEqual({
      outside: [],
      items: [],
      undone: [],
      outstanding: [],
      mayBeComplete: true,
    });
  });

  it("[OFF5] takes nobody for being in because the way in was skipped", () => {
    const log = LogWriter.started(FILE)
      .done(["out", 2], ["work", 7])
      .enter("step.skipped", { step: "in", reason: "late" }, 8);
    expect(gateAt(log, 9).outside).toEqual([["ev1", "site"]]);
  });

  it("[OFF5] in a procedure without places takes a crew member for outside until all of the lane is done", () => {
    const crew: ProcedureFile["crew"] = [{ id: "ev1", call: "EV1", station: "outside" }];
    const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)], { crew });
    expect(gateAt(LogWriter.opened(file), 1).outside).toEqual([]);
    const log = LogWriter.started(file).done(["a", 5]);
    expect(gateAt(log, 6)).toMatchObject({ outside: [["ev1", null]], mayBeComplete: false });
    log.done(["b", 9]);
    expect(gateAt(log, 10).mayBeComplete).toBe(true);
  });

  it("[OFF5] [LOG4] a walk called complete with somebody outside is closed all the same, as a deviation", () => {
    const log = LogWriter.started(FILE).done(["out", 2]).enter("walk.closed", { end: "complete" }, 3);
    expect(log.ledger.phase).toBe("closed");
    expect(log.reasons).toEqual([]);
    expect(log.deviations).toEqual([
      { kind: "closed-outside", step: null, text: "Closed as complete, and EV1 not known to be at a refuge" },
    ]);
    const terminated = LogWriter.started(FILE)
      .done(["out", 2])
      .enter("walk.closed", { end: "terminated", reason: "leak" }, 3);
    expect(terminated.deviations).toEqual([]);
  });
});

describe("the states of a walk", () => {
  const hatch = { id: "hatch", values: ["closed", "open"], start: "closed", end: "closed" };
  const file = fileWith([step("open", "ev1", 5, { sets: { hatch: "open" } }), step("work", "ev1", 5)], {
    format: "tetherline.procedure/2",
    states: [hatch, { id: "chair", values: "crew", start: "free" }],
  });
  const valuesOf = (log: LogWriter) => Object.fromEntries(stateValuesOf(log.ledger));
  const unsettled = (log: LogWriter) =>
    closeGateOf(walkStateAt(log.ledger, minute(60))).states.map(({ state, is, mustBe }) => [
      state.id,
      is,
      mustBe,
    ]);

  it("[OFF5] [LOG2] follow from the steps that were done and from what was entered; the gate tells of an open hatch", () => {
    const log = LogWriter.started(file);
    expect(valuesOf(log)).toEqual({ hatch: "closed", chair: "free" });
    log.done(["open", 5]);
    expect(valuesOf(log)["hatch"]).toBe("open");
    expect(unsettled(log)).toEqual([["hatch", "open", "closed"]]);
    log
      .enter("state.set", { state: "hatch", value: "closed", reason: "found shut" }, 6)
      .enter("state.set", { state: "chair", value: "ev2" }, 6);
    expect(valuesOf(log)).toEqual({ hatch: "closed", chair: "ev2" });
    expect(unsettled(log)).toEqual([]);
    log.enter("step.reopened", { step: "open", reason: "slipped" }, 7).strike(2, 8);
    expect(valuesOf(log)["hatch"]).toBe("closed");
  });

  it("[LOG4] that nobody knows, or with a value that they cannot have, have no effect", () => {
    const log = LogWriter.started(file)
      .enter("state.set", { state: "door", value: "open" }, 1)
      .enter("state.set", { state: "hatch", value: "ajar" }, 1)
      .enter("state.set", { state: "chair", value: "nobody" }, 1);
    expect(log.reasons).toEqual([
      'there is no state "door"',
      '"ajar" is not a value of the state "hatch"',
      '"nobody" is not a value of the state "chair"',
    ]);
  });
});

describe("a walk that is reopened", () => {
  const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]);

  it("[OFF5] [WLK1] goes on where it was, its PET as if it had not been closed, with the reason on record", () => {
    const log = LogWriter.started(file)
      .done(["a", 5])
      .enter("walk.closed", { end: "terminated", reason: "mistaken" }, 6)
      .done(["b", 7])
      .enter("walk.reopened", { reason: "wrong button" }, 8)
      .done(["b", 9]);
    expect(log.reasons).toEqual(["the walk is closed"]);
    const state = walkStateAt(log.ledger, minute(10));
    expect([state.phase, inMinutes(state.pet ?? 0)]).toEqual(["running", 10]);
    expect(log.ledger.steps.get("b" as never)?.finish).toBe(minute(9));
    expect(log.ledger.reopenings).toMatchObject([
      { at: minute(8), actor: "iv", reason: "wrong button", closed: { at: minute(6), end: "terminated" } },
    ]);
    log.enter("walk.closed", { end: "complete" }, 11);
    expect(log.ledger.phase).toBe("closed");
  });

  it("[OFF5] is held again when it was held, and prepared again when its clock had not been started", () => {
    const held = LogWriter.started(file)
      .enter("hold.called", { reason: "comm" }, 2)
      .enter("walk.closed", { end: "aborted" }, 3)
      .enter("walk.reopened", { reason: "no" }, 4);
    expect([held.ledger.phase, held.ledger.holds.at(-1)?.until]).toEqual(["held", null]);
    held.enter("hold.lifted", {}, 5);
    expect(held.ledger.phase).toBe("running");
    const prepared = LogWriter.opened(file)
      .enter("walk.closed", { end: "aborted" }, 1)
      .enter("walk.reopened", { reason: "no" }, 2);
    expect(prepared.ledger.phase).toBe("prepared");
  });

  it("[OFF5] [LOG4] was closed before: a walk that runs cannot be reopened", () => {
    const log = LogWriter.started(file).enter("walk.reopened", { reason: "no" }, 1);
    expect(log.reasons).toEqual(["the walk is not closed"]);
    const opened = LogWriter.opened(file).enter("walk.reopened", { reason: "no" }, 1);
    expect(opened.reasons).toEqual(["the walk is not closed"]);
  });
});
