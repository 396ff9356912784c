import { describe, expect, it } from "vitest";
import type { WalkState } from "../../../src/core/walk/index.ts";
import { foldLog, stateDocument, WalkFold, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute, minutes, progressInOrder } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";
import { worded } from "../said.ts";

const ask = { decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" } };
const FILE = fileWith(
  [
    step("a1", "ev1", 5),
    step("b1", "ev2", 3),
    step("meet", ["ev1", "ev2"], 2),
    step("vent", "iv", 1),
    step("test", "iv", 2, { after: [{ step: "vent", lag: "PT10M" }] }),
    step("look", "iv", 2, { within: ["light"] }),
    step("end", ["ev2", "iv"], 1, { after: ["a1"] }),
  ],
  {
    windows: [{ id: "light", kind: "daylight", spans: [{ from: "PT30M", to: "PT60M" }] }],
    limits: { elapsed: "PT1H" },
  },
);

const state = (log: LogWriter, at: number): WalkState => walkStateAt(log.ledger, minute(at));
const statuses = (log: LogWriter, at: number) => state(log, at).lanes.map(({ status }) => status);
const waits = (log: LogWriter, at: number, lane: number) => state(log, at).lanes[lane]?.waitingOn;

describe("the phase of a walk", () => {
  it("[WLK1] goes prepared, running, held, running, closed", () => {
    const log = LogWriter.opened(FILE);
    expect([state(log, 1).phase, state(log, 1).pet]).toEqual(["prepared", null]);
    log.enter("clock.started", {}, 2);
    expect([state(log, 5).phase, state(log, 5).pet]).toEqual(["running", minutes(3)]);
    log.enter("hold.called", {}, 6);
    expect(state(log, 7).phase).toBe("held");
    // The clock runs on in a hold.
    expect(state(log, 7).pet).toBe(minutes(5));
    log.enter("hold.lifted", {}, 8);
    expect(state(log, 9).phase).toBe("running");
    log.enter("walk.closed", { end: "terminated", reason: "weather" }, 10);
    expect([state(log, 90).phase, state(log, 90).pet]).toEqual(["closed", minutes(8)]);
    expect(log.ledger.closed).toMatchObject({ end: "terminated", reason: "weather" });
    expect(log.reasons).toEqual([]);
  });

  it("[LOG4] takes no command that does not apply in it", () => {
    const log = LogWriter.opened(FILE)
      .enter("hold.called", {}, 0)
      .done(["a1", 0])
      .enter("clock.started", {}, 0)
      .enter("clock.started", {}, 1)
      .enter("hold.lifted", {}, 1)
      .enter("hold.called", {}, 1)
      .enter("hold.called", {}, 2)
      .enter("walk.opened", { procedure: FILE, mode: "live" }, 3)
      .enter("walk.closed", { end: "complete" }, 4)
      .enter("walk.closed", { end: "aborted" }, 5)
      .done(["a1", 5])
      .enter("note.made", { text: "Afterwards." }, 6);
    expect(log.reasons).toEqual([
      "the clock has not been started",
      "the clock has not been started",
      "the clock was already started",
      "the walk is not held",
      "the walk is not running",
      "the walk is already open",
      "the walk is closed",
      "the walk is closed",
    ]);
    expect(log.ledger.notes).toHaveLength(1);
    expect(log.ledger.holds).toEqual([{ from: minute(1), until: minute(4), reason: "", actor: "iv" }]);
  });

  it("[LOG4] before the opening, of another walk, or with an unusable procedure has no effect", () => {
    const other = new LogWriter("walk-2").enter("note.made", { text: "x" }, 0);
    expect(other.reasons).toEqual(["the walk has not been opened"]);
    const mixed = foldLog([
      ...LogWriter.started(FILE).entries,
      ...new LogWriter("walk-2")
        .enter("note.made", { text: "x" }, 5)
        .entries.map((entry) => ({ ...entry, wire: { ...entry.wire, source: "/devices/other" } })),
    ]);
    expect(worded(mixed.ignored)).toMatchObject([
      { source: "/devices/other", reason: 'it belongs to another walk, "walk-2"' },
    ]);
    const broken = new LogWriter().enter(
      "walk.opened",
      { procedure: { format: "tetherline.procedure/9" }, mode: "live" },
      0,
    );
    expect(broken.folded.ledger).toBeNull();
    expect(broken.reasons[0]).toMatch(/^its procedure cannot be used: .*newer than this program/);
  });
});

describe("the lanes of a walk", () => {
  it("[WLK1] are ready before the clock starts, then working, waiting or finished", () => {
    expect(statuses(LogWriter.opened(FILE), 0)).toEqual(["ready", "ready", "ready"]);
    const log = LogWriter.started(FILE);
    expect(statuses(log, 1)).toEqual(["working", "working", "working"]);
    log.done(["b1", 3]);
    expect(statuses(log, 3)).toEqual(["working", "waiting", "working"]);
    log.done(["a1", 5], ["meet", 7]);
    expect(statuses(log, 8)).toEqual(["finished", "waiting", "working"]);
  });

  it("[WLK3] wait on performers who have not arrived, with the step each has yet to complete", () => {
    const log = LogWriter.started(FILE).done(["b1", 3]);
    expect(waits(log, 4, 1)).toMatchObject([
      { kind: "crew", crew: "ev1", step: "a1", last: "a1", until: minutes(5) },
    ]);
    expect(state(log, 4).lanes[1]).toMatchObject({
      step: "meet",
      since: minutes(3),
      expected: minutes(5),
      done: 1,
      of: 3,
    });
  });

  it("[WLK3] wait on the performers of predecessors, never on themselves", () => {
    const log = LogWriter.started(FILE).done(["a1", 5], ["b1", 5], ["meet", 7]);
    expect(waits(log, 8, 1)).toMatchObject([{ crew: "iv", step: "vent", last: "look" }]);
    const late = LogWriter.started(FILE)
      .done(["b1", 2], ["vent", 1])
      .enter("step.skipped", { step: "meet" }, 3);
    expect(waits(late, 4, 1)).toMatchObject([
      { crew: "iv", step: "test" },
      { crew: "ev1", step: "a1" },
    ]);
  });

  it("[WLK3] wait for a lag with the time it ends, then work without another tap", () => {
    const log = LogWriter.started(FILE).done(["vent", 1]);
    expect(waits(log, 4, 2)).toEqual([{ kind: "lag", step: "vent", until: minutes(11) }]);
    expect(state(log, 11).lanes[2]).toMatchObject({ status: "working", since: minutes(11), waitingOn: [] });
  });

  it("[WLK3] wait for a window with the time it opens", () => {
    const log = LogWriter.started(FILE).done(["vent", 1], ["test", 13]);
    expect(waits(log, 14, 2)).toEqual([{ kind: "window", window: "light", until: minutes(30) }]);
    expect(state(log, 31).lanes[2]?.status).toBe("working");
  });

  it("[WLK3] wait for a hold to be lifted", () => {
    const log = LogWriter.started(FILE).enter("hold.called", {}, 4).done(["a1", 5], ["b1", 6]);
    expect(waits(log, 7, 0)).toEqual([{ kind: "hold", since: minutes(4), until: null }]);
    log.enter("hold.lifted", {}, 9);
    expect(state(log, 10).lanes[0]).toMatchObject({ status: "working", since: minutes(9) });
  });

  it("[WLK5] [WLK3] wait for a decision that is not taken, on whoever makes it", () => {
    const file = fileWith([
      step("ask", "ev1", 2, ask),
      step("free", "ev2", 3, { when: { bolt: "free" } }),
      step("stuck", "iv", 4, { when: { bolt: "stuck" } }),
    ]);
    const log = LogWriter.started(file);
    expect(state(log, 1).lanes[1]).toMatchObject({
      status: "waiting",
      waitingOn: [{ crew: "ev1", step: "ask" }],
    });
    expect(state(log, 1).lanes[2]).toMatchObject({ status: "finished", of: 0 });
    log.done(["free", 1]);
    expect(log.reasons).toEqual(['the decision "bolt" has not been taken']);
  });
});

describe("a decision", () => {
  const file = fileWith([
    step("ask", "ev1", 2, ask),
    step("free", "ev2", 3, { when: { bolt: "free" } }),
    step("stuck", "ev2", 4, { when: { bolt: "stuck" } }),
    step("end", ["ev1", "ev2"], 1),
  ]);
  const decide = (log: LogWriter, outcome: string, at: number) =>
    log.enter("decision.taken", { decision: "bolt", outcome }, at);

  it("[WLK5] makes the steps of its branch active, from when it was taken", () => {
    const log = decide(LogWriter.started(file), "stuck", 2).done(["ask", 2]);
    expect(state(log, 3).lanes[1]).toMatchObject({ status: "working", step: "stuck", since: minutes(2) });
    log.done(["free", 4], ["stuck", 7]);
    expect(log.reasons).toEqual(['"free" is not performed as decisions came out']);
    expect(progressInOrder(log.ledger)[2]).toMatchObject({ start: minute(2), finish: minute(7) });
  });

  it("[WLK5] when changed later re-folds: the lanes follow the new branch", () => {
    const log = decide(LogWriter.started(file), "free", 2).done(["ask", 2], ["free", 6]);
    expect(state(log, 7).lanes[1]).toMatchObject({ step: "end" });
    decide(log, "stuck", 8);
    expect(state(log, 8).lanes[1]).toMatchObject({ step: "stuck", done: 0, of: 2 });
    log.done(["stuck", 12], ["end", 13]);
    expect(log.reasons).toEqual([]);
    expect(statuses(log, 14)).toEqual(["finished", "finished", "finished"]);
  });

  it("[WLK5] when struck counts as not taken", () => {
    const log = decide(LogWriter.started(file), "stuck", 2).strike(0, 3);
    expect(log.ledger.outcomes.size).toBe(0);
    expect(log.ledger.network.activity.active).toEqual([true, true, false, true]);
  });

  it("[LOG4] has no effect when unknown, when it has no such outcome, or when taken so already", () => {
    const log = decide(decide(decide(LogWriter.started(file), "bent", 1), "free", 2), "free", 3);
    log.enter("decision.taken", { decision: "nut", outcome: "free" }, 4);
    expect(log.reasons).toEqual([
      '"bent" is not an outcome of the decision "bolt"',
      "the decision was already taken so",
      'there is no decision "nut"',
    ]);
  });
});

describe("striking", () => {
  const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 3)]);
  const struck = (log: LogWriter) => log.folded.struck.size;

  it("[LOG2] takes an entry back as if it had never been, and lists it", () => {
    const log = LogWriter.started(file).done(["a", 5]).strike(0, 6);
    expect(progressInOrder(log.ledger)[0]?.status).toBe("open");
    expect(log.deviations).toMatchObject([
      { kind: "struck", step: "a", text: "Struck: a step marked as done" },
    ]);
    expect(log.folded.entries).toHaveLength(4);
    expect(log.reasons).toEqual([]);
    log.done(["a", 7]);
    expect(progressInOrder(log.ledger)[0]?.finish).toBe(minute(7));
  });

  it("[LOG3] of a strike brings the entry back, and so on", () => {
    const log = LogWriter.started(file).done(["a", 5]).strike(0, 6).strike(0, 7);
    expect(progressInOrder(log.ledger)[0]?.status).toBe("done");
    log.strike(0, 8);
    expect(progressInOrder(log.ledger)[0]?.status).toBe("open");
    expect(struck(log)).toBe(2);
    expect(log.reasons).toEqual([]);
  });

  it("[LOG4] of an entry not there, still to come, struck already, or the opening has no effect", () => {
    const log = LogWriter.started(file)
      .enter("entry.struck", { source: "/devices/iv-tablet", id: "0000000009" }, 1)
      .enter("entry.struck", { source: "/devices/iv-tablet", id: "0000000005" }, 1)
      .done(["a", 5])
      .strike(0, 6)
      .strike(1, 7)
      .enter("entry.struck", { source: "/devices/iv-tablet", id: "0000000001" }, 8);
    expect(log.reasons).toEqual([
      "it strikes an entry that is not in the log",
      "it strikes an entry that comes after it",
      "the entry was already struck",
      "the opening of a walk cannot be struck",
    ]);
    expect(struck(log)).toBe(1);
  });

  it("[LOG3] counts when the strike arrives before what it strikes", () => {
    const { entries } = LogWriter.started(file).done(["a", 5]).strike(0, 6).done(["b", 9]);
    const fold = new WalkFold();
    for (const index of [0, 1, 3, 2, 4]) fold.add(entries[index] ? [entries[index]] : []);
    expect(stateDocument(fold.folded, minute(9), inWords)).toEqual(
      stateDocument(foldLog(entries), minute(9), inWords),
    );
    expect(fold.folded.ignored).toMatchObject([{ id: "0000000005" }]);
  });
});

describe("folding", () => {
  it("costs one entry its own step at the end, and a late one only what comes after it", () => {
    const { entries } = LogWriter.started(
      fileWith([step("a", "ev1", 5), step("b", "ev1", 3), step("c", "ev1", 1)]),
    ).done(["a", 5], ["b", 8], ["c", 9]);
    const fold = new WalkFold();
    expect(entries.map((entry) => fold.add([entry]))).toEqual([1, 1, 1, 1, 1]);
    expect(fold.add(entries)).toBe(0);
    const late = new WalkFold();
    late.add(entries.filter((_, index) => index !== 3));
    expect(late.add(entries.slice(3, 4))).toBe(2);
  });
});

describe("the state document", () => {
  it("[LOG3] has the keys and units of the command line, in seconds", () => {
    const log = LogWriter.started(FILE).done(["b1", 3]);
    expect(stateDocument(log.folded, minute(4), inWords)).toEqual({
      walk: "walk-1",
      amendments: [],
      newer: [],
      phase: "running",
      pet: 240,
      lanes: [
        { crew: "ev1", status: "working", step: "a1", done: 0, of: 2, waitingOn: [], behind: 0 },
        {
          crew: "ev2",
          status: "waiting",
          step: "meet",
          done: 1,
          of: 3,
          waitingOn: [{ crew: "ev1", step: "a1" }],
          behind: 0,
        },
        { crew: "iv", status: "working", step: "vent", done: 0, of: 4, waitingOn: [], behind: 180 },
      ],
      forecast: { finish: 33 * 60, margin: 27 * 60, withinLimit: 1 },
      items: {},
      states: {},
      ignored: [],
      deviations: [],
      outstanding: [],
      return: { seconds: null, turnBack: null, broken: [], bar: null },
      alerts: [
        {
          level: "look-soon",
          alert: "overtime vent 3",
          about: "vent",
          since: 240,
          seen: null,
          text: "IV: Do vent (in work for 4 min, at most 60 s were planned)",
        },
      ],
    });
  });

  it("is `null` when no walk was opened", () => {
    expect(stateDocument(foldLog([]), minute(0), inWords)).toBeNull();
  });
});
