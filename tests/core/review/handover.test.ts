import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { handoverOf } from "../../../src/core/review/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const FILE = fileWith(
  [
    step("vent", "ev1", 10, { records: [{ id: "p", label: "Pressure" }] }),
    step("look", "ev2", 5, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
    }),
    step("turn", ["ev1", "ev2"], 20),
    step("force", "ev2", 5, { when: { bolt: "stuck" } }),
    step("pack", "ev1", 30),
  ],
  {
    limits: { elapsed: "PT2H" },
    places: [{ id: "lock", label: "Airlock", refuge: true }],
    items: [{ id: "key", label: "Key", start: { crew: "ev1" } }],
    supplies: [{ crew: "ev1", id: "gas", label: "Gas", unit: "kPa", full: 900, redline: 100, perHour: 100 }],
  },
);

const handoverAt = (log: LogWriter, at: number) =>
  handoverOf(walkStateAt(log.ledger, minute(at)), log.folded);

/** Ids and minutes of PET at which steps begin. */
const begins = (steps: readonly { step: string; start: number }[] | null | undefined) =>
  steps?.map(({ step: id, start }) => [id, inMinutes(start)]);

describe("a handover", () => {
  it("[REV4] tells of everybody what was done last, what is in work, who waits, and the next half hour", () => {
    const { lanes } = handoverAt(LogWriter.started(FILE).done(["look", 5]), 6);
    const [ev1, ev2, iv] = lanes;
    expect([ev1?.last, ev1?.inWork?.step]).toEqual([null, "vent"]);
    expect([ev2?.last?.step, ev2?.inWork, ev2?.lane.waitingOn[0]?.kind]).toEqual(["look", null, "crew"]);
    expect(begins(ev1?.next)).toEqual([
      ["turn", 10],
      ["pack", 30],
    ]);
    expect(begins(ev2?.next)).toEqual([["turn", 10]]);
    expect([iv?.lane.status, iv?.next]).toEqual(["finished", []]);
  });

  it("[REV4] counts a step that begins exactly 30 minutes from now, and none after that", () => {
    const next = (at: number) => begins(handoverAt(LogWriter.started(FILE), at).lanes[0]?.next)?.at(-1);
    expect(next(0)).toEqual(["pack", 30]);
    expect(handoverAt(LogWriter.started(FILE), 0).finish).toBe(60 * 60_000);
    const late = fileWith([step("a", "ev1", 31), step("b", "ev1", 5)]);
    expect(begins(handoverAt(LogWriter.started(late), 0).lanes[0]?.next)).toEqual([]);
  });

  it("[REV4] carries what is outstanding, the alerts with who has seen them, and the hold", () => {
    const log = LogWriter.started(FILE)
      .done(["look", 5], ["vent", 9])
      .enter("hold.called", { reason: "comm lost" }, 11)
      .enter("alert.seen", { alert: "hold 660" }, 12, { actor: "ev2" });
    const { outstanding, alerts, hold } = handoverAt(log, 13);
    expect(outstanding.map(({ kind, step: id }) => [kind, id])).toEqual([["record-not-taken", "vent"]]);
    expect(alerts.map(({ alert, seen }) => [alert, seen?.actor])).toEqual([["hold 660", "ev2"]]);
    expect(hold?.reason).toBe("comm lost");
  });

  it("[REV4] tells what was otherwise, without what was taken back", () => {
    const log = LogWriter.started(FILE)
      .done(["vent", 9])
      .strike(0, 10)
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 4)
      .done(["look", 5])
      .enter("step.skipped", { step: "force", reason: "no time" }, 6)
      .enter("step.reopened", { step: "look", reason: "looked again" }, 7)
      .enter("item.moved", { item: "key", to: { crew: "ev2" }, reason: "handed over" }, 8)
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 9);
    const handover = handoverAt(log, 12);
    expect(handover.deviations.map(({ kind, step: id }) => [kind, id])).not.toContainEqual([
      "struck",
      "vent",
    ]);
    expect(handover.reopenings.map(({ step: id, reason }) => [id, reason])).toEqual([
      ["look", "looked again"],
    ]);
    expect(handover.corrections.map(({ item, reason, actor }) => [item, reason, actor])).toEqual([
      ["key", "handed over", "iv"],
    ]);
    expect(handover.decisions.map(({ outcome, was }) => [outcome, was])).toEqual([
      ["stuck", null],
      ["free", "stuck"],
    ]);
  });

  it("[REV4] gives finish, margin and turn-back by the forecast, and each supply with the age of its last reading", () => {
    const log = LogWriter.started(FILE).enter("supply.read", { crew: "ev1", supply: "gas", value: 880 }, 2);
    const { finish, margin, supplies } = handoverAt(log, 6);
    expect([inMinutes(finish ?? 0), inMinutes(margin ?? 0)]).toEqual([60, 60]);
    expect([supplies[0]?.forecast.last?.value, inMinutes(supplies[0]?.forecast.age ?? 0)]).toEqual([880, 4]);
    const outside: Partial<ProcedureFile> = {
      crew: [{ id: "ev1", call: "EV1", station: "outside", start: "site" }],
      places: [{ id: "lock", refuge: true }, { id: "site" }],
      routes: [{ between: ["lock", "site"], length: 4, time: "PT2M" }],
      limits: { elapsed: "PT1H" },
    };
    const out = LogWriter.started(fileWith([step("work", "ev1", 30, { at: "site" })], outside));
    expect(handoverAt(out, 5).turnBack?.because).toBe("limit");
  });

  it("[REV4] has the plan ahead before the clock is started, and nothing ahead once the walk is closed", () => {
    const prepared = handoverAt(LogWriter.opened(FILE), 0);
    expect([prepared.state.pet, inMinutes(prepared.finish ?? 0), prepared.alerts]).toEqual([null, 60, []]);
    const closed = handoverAt(
      LogWriter.started(FILE).done(["look", 5]).enter("walk.closed", { end: "aborted" }, 20),
      90,
    );
    expect([closed.at, closed.finish, closed.margin, closed.turnBack]).toEqual([
      minute(20),
      null,
      null,
      null,
    ]);
    expect(closed.lanes.map(({ inWork, next }) => [inWork, next])).toEqual([
      [null, null],
      [null, null],
      [null, null],
    ]);
    expect(closed.lanes[1]?.last?.step).toBe("look");
  });

  it("[REV4] says that there is no forecast rather than that nothing begins", () => {
    const file = fileWith([step("dark", "ev1", 10, { within: ["night"] })], {
      windows: [{ id: "night", kind: "darkness", spans: [{ from: "PT0S", to: "PT5M" }] }],
    });
    const { lanes, finish } = handoverAt(LogWriter.started(file).enter("hold.called", {}, 0), 30);
    expect([lanes[0]?.next, finish]).toEqual([null, null]);
  });
});
