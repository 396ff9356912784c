import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import {
  alertDrafts,
  alertsOf,
  foldLog,
  isShown,
  nextPlayedMove,
  playedTimesOf,
  stateDocument,
  walkStateAt,
} from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

/** A walk of one person outside, two minutes from the lock, with five minutes of closeout. */
const OUTSIDE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "site" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "site" }],
  routes: [{ between: ["lock", "site"], length: 4, time: "PT2M" }],
};

/** The alerts at a minute of PET: level, key, since when, whether somebody has seen it. */
const alertsAt = (log: LogWriter, at: number) =>
  alertsOf(walkStateAt(log.ledger, minute(at))).map(({ level, alert, since, seen }) => [
    level,
    alert,
    inMinutes(since),
    seen !== null,
  ]);

const textsAt = (log: LogWriter, at: number) =>
  alertsOf(walkStateAt(log.ledger, minute(at))).map(({ text }) => inWords(text));

const LONG = { low: "PT10M", likely: "PT20M", high: "PT30M" };

describe("alerts", () => {
  const work = fileWith([step("work", "ev1", null, { time: LONG }), step("rest", "ev1", 500)]);

  it("[OFF3] are raised only while the walk runs or is held", () => {
    const log = LogWriter.opened(work);
    expect(alertsAt(log, 200)).toEqual([]);
    log.enter("clock.started", {}, 0);
    expect(alertsAt(log, 31)).not.toEqual([]);
    log.enter("walk.closed", { end: "aborted" }, 40);
    expect(alertsAt(log, 41)).toEqual([]);
  });

  it("[OFF3] tell of a step in work beyond its high time, again each time that has doubled, without holds", () => {
    const log = LogWriter.started(work);
    expect(alertsAt(log, 30)).toEqual([]);
    expect(alertsAt(log, 31)).toEqual([["look-soon", "overtime work 1", 30, false]]);
    expect(textsAt(log, 31)).toEqual(["EV1: Do work (in work for 31 min, at most 30 min were planned)"]);
    log.enter("alert.seen", { alert: "overtime work 1" }, 32);
    expect(alertsAt(log, 59)).toEqual([["look-soon", "overtime work 1", 30, true]]);
    expect(alertsAt(log, 61)).toEqual([["look-soon", "overtime work 2", 60, false]]);
    const held = LogWriter.started(work).enter("hold.called", {}, 20).enter("hold.lifted", {}, 120);
    expect(alertsAt(held, 129)).toEqual([]);
    expect(alertsAt(held, 131)).toEqual([["look-soon", "overtime work 1", 130, false]]);
  });

  it("[OFF3] tell of a hold until it is lifted, with its reason", () => {
    const log = LogWriter.started(work).enter("hold.called", { reason: "comm lost" }, 5);
    expect(alertsAt(log, 6)).toEqual([["look-soon", "hold 300", 5, false]]);
    expect(textsAt(log, 6)).toEqual(["The walk has been held since 0:05:00: comm lost"]);
    log.enter("hold.lifted", {}, 7);
    expect(alertsAt(log, 8)).toEqual([]);
  });

  it("[OFF3] tell of a value outside its limits: to act now under a warning, and each further value anew", () => {
    const records = [{ id: "p", label: "Pressure", unit: "kPa", min: 27 }];
    const file = fileWith([
      step("plain", "ev1", 500, { records }),
      step("warned", "ev2", 500, { records, alerts: [{ level: "warning", text: "Below 27.0: go in." }] }),
    ]);
    const log = LogWriter.started(file)
      .enter("record.taken", { step: "plain", record: "p", value: 26.5 }, 2)
      .enter("record.taken", { step: "warned", record: "p", value: 26.5 }, 3);
    expect(alertsAt(log, 4)).toEqual([
      ["act-now", "record warned p 1", 3, false],
      ["look-soon", "record plain p 1", 2, false],
    ]);
    expect(textsAt(log, 4)[0]).toBe("Pressure: 26.5 kPa is below 27 kPa");
    log.enter("alert.seen", { alert: "record plain p 1", level: "look-soon" }, 5);
    log.enter("record.taken", { step: "plain", record: "p", value: 26 }, 6);
    expect(alertsAt(log, 7)[1]).toEqual(["look-soon", "record plain p 2", 6, false]);
    log.enter("record.taken", { step: "plain", record: "p", value: 28 }, 8);
    expect(alertsAt(log, 9).map(([, key]) => key)).toEqual(["record warned p 1"]);
  });

  it("[OFF3] tell of a watch from its due time, to act now once a quarter of its period has passed", () => {
    const file = fileWith([step("work", "ev1", 500)], {
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", every: "PT40M" }],
    });
    const log = LogWriter.started(file);
    expect(alertsAt(log, 39)).toEqual([]);
    expect(alertsAt(log, 40)).toEqual([["look-soon", "watch gloves 2400", 40, false]]);
    log.enter("alert.seen", { alert: "watch gloves 2400", level: "look-soon" }, 41);
    expect(alertsAt(log, 49)).toEqual([["look-soon", "watch gloves 2400", 40, true]]);
    expect(alertsAt(log, 50)).toEqual([["act-now", "watch gloves 2400", 50, false]]);
    expect(textsAt(log, 50)).toEqual(["EV1: Check gloves (due since 0:40:00)"]);
    log.enter("watch.kept", { watch: "gloves", due: 2400 }, 51);
    expect(alertsAt(log, 52)).toEqual([]);
  });

  it("[OFF3] tell of a turn-back time that is near or has passed, for as long as somebody is outside", () => {
    const file = fileWith([step("work", "ev1", 500, { at: "site" }), step("in", "ev1", 2, { to: "lock" })], {
      ...OUTSIDE,
      limits: { elapsed: "PT60M" },
    });
    const log = LogWriter.started(file);
    const turnBack = (at: number) => alertsAt(log, at).filter(([, key]) => key === "turn-back");
    expect(turnBack(42)).toEqual([]);
    expect(turnBack(44)).toEqual([["look-soon", "turn-back", 43, false]]);
    log.enter("alert.seen", { alert: "turn-back", level: "look-soon" }, 45);
    expect(turnBack(57)).toEqual([["look-soon", "turn-back", 43, true]]);
    expect(turnBack(58)).toEqual([["act-now", "turn-back", 58, false]]);
    expect(textsAt(log, 60)[0]).toBe("The turn-back time has passed: it was 0:58:00, 2 min ago");
    log.enter("alert.seen", { alert: "turn-back", level: "act-now" }, 61);
    const [alert] = alertsOf(walkStateAt(log.ledger, minute(62)));
    expect(alert && [alert.seen?.actor, isShown(alert)]).toEqual(["iv", true]);
    log.done(["work", 63], ["in", 65]);
    expect(turnBack(66)).toEqual([]);
  });

  it("[OFF3] tell of somebody outside whose way back nobody knows", () => {
    const file = fileWith([step("work", "ev1", 500, { at: "site" })], { ...OUTSIDE, routes: [] });
    const log = LogWriter.started(file);
    expect(alertsAt(log, 5)).toEqual([["act-now", "return", 5, false]]);
    expect(textsAt(log, 5)).toEqual(["EV1: no way back into a refuge fits any more, or none is known"]);
    log.enter("alert.raised", { alert: "return", level: "act-now" }, 6);
    expect(alertsAt(log, 9)).toEqual([["act-now", "return", 6, false]]);
  });

  it("[OFF3] tell of a supply that will be at its redline soon, and of one that is", () => {
    const file = fileWith([step("work", "ev1", 500)], {
      supplies: [
        { crew: "ev1", id: "oxygen", label: "Oxygen", unit: "kPa", full: 6000, redline: 600, perHour: 2700 },
      ],
    });
    const log = LogWriter.started(file);
    expect(alertsAt(log, 89)).toEqual([]);
    expect(alertsAt(log, 91)).toEqual([["look-soon", "supply ev1 oxygen", 90, false]]);
    expect(textsAt(log, 91)).toEqual(["EV1: Oxygen will be at its redline in 29 min, at 2:00:00"]);
    expect(alertsAt(log, 121)).toEqual([["act-now", "supply ev1 oxygen", 120, false]]);
  });

  it("[OFF3] tell of a rest that does not fit the limit or its windows any more", () => {
    const file = fileWith([step("a", "ev1", 30), step("b", "ev1", 20)], { limits: { elapsed: "PT60M" } });
    const log = LogWriter.started(file);
    expect(alertsAt(log, 10)).toEqual([["know", "limit", 10, false]]);
    expect(textsAt(log, 10)).toEqual(["By the forecast 10 min of the limit will be left"]);
    expect(alertsAt(log, 42)).toEqual([
      ["look-soon", "limit", 42, false],
      ["look-soon", "overtime a 1", 30, false],
    ]);
    log.enter("alert.raised", { alert: "limit", level: "look-soon" }, 42);
    expect(alertsAt(log, 44)[0]).toEqual(["look-soon", "limit", 42, false]);
    const missed = fileWith([step("a", "ev1", 500), step("call", "ev1", 2, { within: ["contact"] })], {
      windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT5M", to: "PT15M" }] }],
    });
    expect(alertsAt(LogWriter.started(missed), 20)).toEqual([["look-soon", "forecast", 20, false]]);
  });
});

describe("the log of alerts", () => {
  const file = fileWith([step("work", "ev1", 500)]);

  it("[OFF3] [LOG3] tells each once per level, however many devices saw it, and lists no entry as mistaken", () => {
    const log = LogWriter.started(file).enter("hold.called", {}, 5);
    const drafts = () =>
      alertDrafts(log.ledger, alertsOf(walkStateAt(log.ledger, minute(6))), minute(6), "iv").map(
        ({ name, data }) => [name, data],
      );
    expect(drafts()).toEqual([["alert.raised", { alert: "hold 300", level: "look-soon" }]]);
    const data = { alert: "hold 300", level: "look-soon" } as const;
    log.enter("alert.raised", data, 6).enter("alert.raised", data, 6.1, { source: "/devices/ground" });
    expect(drafts()).toEqual([]);
    expect(log.ledger.alerts.raised).toHaveLength(1);
    expect(log.reasons).toEqual([]);
    expect(foldLog(log.entries.toReversed()).ledger?.alerts).toEqual(log.ledger.alerts);
    log.enter("walk.closed", { end: "aborted" }, 7).enter("alert.seen", { alert: "hold 300" }, 8);
    expect(log.reasons).toEqual([]);
  });

  it("[OFF3] is never the reason for an alert, and one that is struck is as if it had not been", () => {
    const log = LogWriter.started(file).enter("alert.raised", { alert: "turn-back", level: "act-now" }, 5);
    expect(alertsAt(log, 6)).toEqual([]);
    log.enter("hold.called", {}, 7).enter("alert.seen", { alert: "hold 420" }, 8);
    expect(alertsAt(log, 9)).toEqual([["look-soon", "hold 420", 7, true]]);
    log.strike(0, 10);
    expect(alertsAt(log, 11)).toEqual([["look-soon", "hold 420", 7, false]]);
  });

  it("[OFF3] stands in the state with who has seen what", () => {
    const log = LogWriter.started(file)
      .enter("hold.called", {}, 5)
      .enter("alert.seen", { alert: "hold 300" }, 6, { actor: "ev2" });
    expect(stateDocument(log.folded, minute(7), inWords)?.alerts).toEqual([
      {
        level: "look-soon",
        alert: "hold 300",
        about: null,
        since: 300,
        seen: { by: "ev2", at: "2031-04-02T09:06:00.000Z" },
        text: "The walk has been held since 0:05:00",
      },
    ]);
  });
});

describe("a played crew", () => {
  it("[OFF3] keeps each watch when it falls due, and none when there is nothing left to do", () => {
    const file = fileWith([step("out", "ev1", 10), step("in", "ev1", 50)], {
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", from: "out", until: "in", every: "PT20M" }],
    });
    const log = LogWriter.started(file);
    const times = playedTimesOf(1);
    const played: unknown[] = [];
    let at = minute(0);
    for (;;) {
      const move = nextPlayedMove(log.ledger, times, at);
      if (!move) break;
      at = move.at;
      for (const draft of move.drafts) {
        log.enter(draft.name, draft.data as never, inMinutes(at - minute(0)));
        played.push([draft.name, inMinutes(at - minute(0)), draft.actor]);
      }
    }
    expect(played).toEqual([
      ["step.done", 10, "ev1"],
      ["watch.kept", 30, "ev1"],
      ["watch.kept", 50, "ev1"],
      ["step.done", 60, "ev1"],
    ]);
  });
});
