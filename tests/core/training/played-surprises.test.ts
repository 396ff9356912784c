import { describe, expect, it } from "vitest";
import { walkRecords } from "../../../src/core/learn/index.ts";
import { evidenceOf } from "../../../src/core/learn/observation.ts";
import { alertsOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { doneAt, fire, played } from "./played.ts";
import { FILE, surprise, surprisesFrom } from "./surprise-builder.ts";

const factsNamed = (log: LogWriter, name: string) =>
  log.entries.flatMap(({ read: { fact }, at }) => (fact?.name === name ? [{ fact, at }] : []));

describe("[TRN1] a played crew", () => {
  it("without a surprise does what is written", () => {
    const log = played([]);
    expect(["fetch", "read", "work", "try", "meet"].map((step) => doneAt(log, step))).toEqual([
      10, 15, 20, 24, 34,
    ]);
  });

  it("takes longer for a step that is stretched, from its beginning, whenever that is said", () => {
    const does = { kind: "stretch", step: "read", factor: 3 };
    for (const when of [
      { pet: "PT12M" },
      { step: "read" },
      { place: "mast" },
      { place: "mast", crew: "ev1" },
    ])
      expect(doneAt(played(surprisesFrom(surprise("a", does, { when }))), "read")).toBe(25);
  });

  it("is not stretched by what has not come", () => {
    const does = { kind: "stretch", step: "read", factor: 3 };
    const log = played(surprisesFrom(surprise("a", does, { when: { pet: "PT1H30M" } })));
    expect(doneAt(log, "read")).toBe(15);
  });

  it("reads a value outside its limits, which is alerted as any other", () => {
    const does = { kind: "record", step: "read", record: "turns", value: 3 };
    const log = played(surprisesFrom(surprise("a", does)), [], { closes: false });
    expect(log.ledger.steps.get("read" as never)?.records).toMatchObject([{ record: "turns", value: 3 }, {}]);
    const alerts = alertsOf(walkStateAt(log.ledger, minute(20)));
    expect(alerts.map(({ alert }) => alert)).toContain("record read turns 1");
  });

  it("says that an item is not there, looks for it, and goes on once somebody enters where it is", () => {
    const does = { kind: "missing", item: "bag", says: "It is not on the rack", for: "PT15M" };
    const alone = played(surprisesFrom(surprise("a", does)));
    expect(factsNamed(alone, "note.made")).toEqual([
      { fact: { name: "note.made", step: "fetch", text: "It is not on the rack" }, at: minute(10) },
    ]);
    expect(doneAt(alone, "fetch")).toBe(25);
    const helped = played(surprisesFrom(surprise("a", does)), [
      [
        12,
        (log) => log.enter("item.moved", { item: "bag", to: { place: "mast" }, reason: "in the net" }, 12),
      ],
    ]);
    expect(doneAt(helped, "fetch")).toBe(12);
  });

  it("of whom nothing is heard is heard again, and another goes on meanwhile", () => {
    const does = { kind: "silent", crew: "ev1", for: "PT10M" };
    const log = played(surprisesFrom(surprise("a", does)));
    expect([doneAt(log, "fetch"), doneAt(log, "read"), doneAt(log, "work")]).toEqual([15, 20, 20]);
  });

  it("without contact enters nothing of anybody outside; who is inside goes on", () => {
    const log = played(
      surprisesFrom(surprise("a", { kind: "contact", for: "PT60M" }, { when: { pet: "PT1M" } })),
    );
    expect([doneAt(log, "fetch"), doneAt(log, "work"), doneAt(log, "watch")]).toEqual([61, 61, 60]);
  });

  it("is silent through one gap after another", () => {
    const does = { kind: "silent", crew: "ev1", for: "PT10M" };
    const log = played(
      surprisesFrom(
        surprise("b", does, { when: { pet: "PT14M" } }),
        surprise("a", { kind: "contact", for: "PT10M" }),
      ),
    );
    expect(doneAt(log, "fetch")).toBe(24);
  });

  it("reads a supply that falls faster, from the start where it was laid, and bound records agree", () => {
    const does = { kind: "supply", crew: "ev1", supply: "oxygen", factor: 6 };
    const log = played(surprisesFrom(surprise("a", does, { when: { pet: "PT10M" } })));
    const readings = factsNamed(log, "supply.read").map(({ fact, at }) => [
      (at - minute(0)) / 60_000,
      "value" in fact ? fact.value : null,
    ]);
    // 100 an hour as planned up to 10 min, six times as much from there.
    expect(readings).toEqual([
      [0, 1000],
      [10, 983],
      // The record that is bound to the supply was a reading at 15 min.
      [25, 833],
    ]);
    const taken = log.ledger.steps.get("read" as never)?.records.find(({ record }) => record === "oxygen");
    expect(taken).toMatchObject({ value: 933, outOfRange: false });
  });

  it("reads a supply from the firing on where it was fired by hand", () => {
    const does = { kind: "supply", crew: "ev1", supply: "oxygen", factor: 6 };
    const [one] = surprisesFrom(surprise("a", does));
    const log = played([], [[12, fire(one, 12)]]);
    expect(factsNamed(log, "supply.read").map(({ at }) => (at - minute(0)) / 60_000)).toEqual([12, 25]);
  });

  it("decides otherwise", () => {
    const does = { kind: "decision", decision: "bolt", outcome: "stuck" };
    expect(played(surprisesFrom(surprise("a", does))).ledger.outcomes.get("bolt" as never)).toBe("stuck");
    const late = played(surprisesFrom(surprise("a", does, { when: { pet: "PT30M" } })));
    expect(late.ledger.outcomes.get("bolt" as never)).toBe("turns");
  });
});

describe("[LRN1] the times that a surprise made", () => {
  const told = (log: LogWriter) => {
    const [record] = walkRecords([log.folded]);
    if (!record) throw new Error("no walk");
    return evidenceOf(record).observations.map(({ entry }) => entry.step.id);
  };

  it("tell nothing of how long the work takes; the others do", () => {
    expect(told(played([]))).toEqual(["fetch", "read", "work", "try", "meet", "watch"]);
    for (const [does, left] of [
      [{ kind: "stretch", step: "read", factor: 3 }, ["fetch", "work", "try", "meet", "watch"]],
      [{ kind: "missing", item: "bag", says: "Gone", for: "PT7M" }, ["read", "work", "try", "meet", "watch"]],
      [{ kind: "silent", crew: "ev1", for: "PT7M" }, ["work", "try", "meet", "watch"]],
      [{ kind: "contact", for: "PT7M" }, ["try", "meet", "watch"]],
      [
        { kind: "record", step: "read", record: "turns", value: 3 },
        ["fetch", "read", "work", "try", "meet", "watch"],
      ],
    ] as const)
      expect(told(played(surprisesFrom(surprise("a", does)))), does.kind).toEqual(left);
  });
});

describe("[TRN2] surprises in a log", () => {
  const does = { kind: "stretch", step: "read", factor: 3 };

  it("come when they are fired, once, however often", () => {
    const [one] = surprisesFrom(surprise("a", does, { when: { pet: "PT1H" } }));
    const log = played(one ? [one] : [], [
      [11, fire(one, 11)],
      [12, fire(one, 12)],
    ]);
    expect(doneAt(log, "read")).toBe(25);
    expect(log.folded.ignored).toEqual([]);
  });

  it("change nothing of the state by themselves", () => {
    const bare = LogWriter.started(FILE, { mode: "rehearsal" }).done(["fetch", 10]);
    const [one] = surprisesFrom(surprise("a", does));
    const carrying = LogWriter.opened(FILE, { mode: "rehearsal" });
    fire(one, 0)(carrying);
    carrying.enter("clock.started", {}, 0).done(["fetch", 10]);
    const { surprises: none, ...expected } = bare.ledger;
    const { surprises, ...state } = carrying.ledger;
    expect([none.length, surprises.length]).toEqual([0, 1]);
    expect(JSON.stringify(walkStateAt({ ...state, surprises }, minute(12)).lanes)).toBe(
      JSON.stringify(walkStateAt({ ...expected, surprises: none }, minute(12)).lanes),
    );
    expect(carrying.folded.deviations).toEqual([]);
  });

  it("have no effect in a walk that is no rehearsal, nor once it is closed, and that is told", () => {
    const [one] = surprisesFrom(surprise("a", does));
    const live = LogWriter.started(FILE);
    fire(one, 1)(live);
    expect(live.reasons).toEqual(["a walk that is no rehearsal takes no surprises"]);
    const closed = LogWriter.started(FILE, { mode: "rehearsal" }).enter("walk.closed", { end: "aborted" }, 1);
    fire(one, 2)(closed);
    expect(closed.reasons).toEqual(["the walk is closed"]);
  });

  it("that nobody can read are passed over", () => {
    const log = LogWriter.started(FILE, { mode: "rehearsal" }).enter(
      "surprise.fired",
      { surprise: "ff00" },
      1,
    );
    expect(log.reasons).toEqual([]);
  });
});
