import { describe, expect, it } from "vitest";
import {
  followMarkers,
  followRows,
  keepUnchanged,
  type StepRow,
} from "../../../src/app/follow/follow-rows.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { WalkFold, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const file = fileWith([
  step("a", "ev1", 5),
  step("b", "ev2", 5),
  step("join", ["ev1", "ev2"], 5),
  step("try", "ev1", 1, {
    decide: { id: "bolt", ask: "Turns?", outcomes: ["turns", "stuck"], expect: "turns" },
  }),
  step("out", "ev1", 2, { when: { bolt: "turns" } }),
  step("call", "ev1", 2, { when: { bolt: "stuck" } }),
]);

const rowsAt = (log: LogWriter, at: Instant) => followRows(walkStateAt(log.ledger, at));
const stagesAt = (log: LogWriter, at: number) =>
  Object.fromEntries(
    rowsAt(log, minute(at)).flatMap((row) => (row.kind === "step" ? [[row.key, row.stage]] : [])),
  );

describe("the rows of the follow list", () => {
  it("say of each step how it stands, and of undecided branches that they may come", () => {
    const log = LogWriter.started(file).done(["b", 4]);
    expect(stagesAt(log, 4)).toEqual({
      a: "working",
      b: "done",
      join: "waiting",
      try: "later",
      out: "maybe",
      call: "maybe",
    });
  });

  it("[WLK5] leave out the branch that was not taken", () => {
    const log = LogWriter.started(file)
      .done(["a", 4], ["b", 4], ["join", 9])
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 10)
      .done(["try", 10]);
    expect(Object.keys(stagesAt(log, 10))).toEqual(["a", "b", "join", "try", "call"]);
  });

  it("name those who stand before a step and what for", () => {
    const rows = rowsAt(LogWriter.started(file).done(["b", 4]), minute(4));
    const join = rows.find(({ key }) => key === "join") as StepRow;
    expect(join.waitingHere).toMatchObject([
      { lane: 1, waitingOn: [{ kind: "crew", crew: "ev1", step: "a" }] },
    ]);
  });

  it("put each crew member's marker at the step it has come to", () => {
    const state = walkStateAt(LogWriter.started(file).done(["b", 4]).ledger, minute(4));
    expect(followMarkers(state)).toEqual([
      { lane: 0, at: "a", waiting: false },
      { lane: 1, at: "join", waiting: true },
      { lane: 2, at: null, waiting: false },
    ]);
  });

  /** Rows of one log that grows, as the screen has it. */
  function growing() {
    const log = LogWriter.started(file);
    const fold = new WalkFold();
    return {
      log,
      rows: (at: number) => {
        fold.add(log.entries);
        if (!fold.folded.ledger) throw new Error("not opened");
        return followRows(walkStateAt(fold.folded.ledger, minute(at)));
      },
    };
  }

  it("stay the same objects while nothing they say changes", () => {
    const { log, rows } = growing();
    const before = rows(1);
    expect(keepUnchanged(before, rows(2))).toBe(before);
    log.done(["a", 3]);
    const after = keepUnchanged(before, rows(3));
    expect(after).not.toBe(before);
    expect(after.find(({ key }) => key === "b")).toBe(before.find(({ key }) => key === "b"));
  });

  it("may let the times of steps to come stand for a moment, but never how a step stands", () => {
    const { log, rows } = growing();
    const before = rows(1);
    log.done(["a", 3], ["b", 3]);
    const next = rows(3);
    const first = keepUnchanged(before, next, true);
    const row = (all: typeof first, key: string) => all.find((one) => one.key === key) as StepRow;
    expect(row(next, "try").start).not.toBe(row(before, "try").start);
    expect(row(first, "try")).toBe(row(before, "try"));
    expect(row(first, "a").stage).toBe("done");
    expect(row(first, "join").stage).toBe("working");
    expect(row(keepUnchanged(first, next), "try")).toBe(row(next, "try"));
  });

  it("[AMD4] show what an unseen amendment took out where it stood, in nobody's way, until it was seen", () => {
    const log = LogWriter.started(file).done(["a", 5]);
    const changes = [{ drop: "join" }, { drop: "call" }, { add: step("late", "ev2", 1), behind: "b" }];
    log.enter("plan.amended", { changes, reason: "No time", needs: 2 }, 6);
    const state = walkStateAt(log.ledger, minute(7));
    const { amendments } = log.ledger;
    const rows = followRows(state, [], amendments);
    expect(rows.map(({ key, stage }) => (stage === "gone" ? key : null)).filter(Boolean)).toEqual([
      "gone join",
      "gone call",
    ]);
    const keys = rows.map(({ key }) => key);
    expect(keys.indexOf("gone join")).toBe(keys.indexOf("b") + 1);
    expect(keys.indexOf("gone call")).toBe(keys.indexOf("out") + 1);
    expect(rows.find(({ key }) => key === "gone join")?.lanes).toEqual([0, 1]);
    expect(followRows(state).some(({ kind }) => kind === "gone")).toBe(false);
  });

  it("[AMD4] show nothing as taken out that a later amendment put back", () => {
    const log = LogWriter.started(file);
    log.enter("plan.amended", { changes: [{ drop: "join" }], reason: "No time", needs: 2 }, 6);
    const changes = [{ add: step("join", ["ev1", "ev2"], 5), behind: "b" }];
    log.enter("plan.amended", { changes, reason: "Time again", needs: 2 }, 8);
    const rows = followRows(walkStateAt(log.ledger, minute(9)), [], log.ledger.amendments);
    expect(rows.some(({ kind }) => kind === "gone")).toBe(false);
    expect(rows.some(({ key }) => key === "join")).toBe(true);
    expect(log.ledger.amendments).toHaveLength(2);
  });
});
