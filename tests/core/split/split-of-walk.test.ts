import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { SplitAnswer } from "../../../src/core/split/index.ts";
import { splitOf, walkSplitCase } from "../../../src/core/split/index.ts";
import { forecastOf } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const ALL = { tries: 2_000, seed: 1, parts: 20_000 };

const format2 = (tasks: ProcedureFile["tasks"], more: Partial<ProcedureFile> = {}) =>
  fileWith(tasks, { format: "tetherline.procedure/2", ...more });

const FILE = format2([
  task("wash", [step("washing", "ev1", 20, { or: [["ev2"]] })]),
  task("wire", [step("wiring", "ev1", 30, { or: [["ev2"]] })], { title: "Wire", order: "free" }),
  task("look", [step("looking", "ev2", 10)], { order: "free" }),
  task("last", [step("end", ["ev1", "ev2"], 5)], { closeout: true }),
]);

const ledgerOf = (log: LogWriter) => {
  const { ledger } = log.folded;
  if (!ledger) throw new Error("the walk was not opened");
  return ledger;
};

const answerAt = (log: LogWriter, at: number): SplitAnswer =>
  splitOf(walkSplitCase(ledgerOf(log), minute(at)), ALL);

/** The walk with an answer entered, and the forecast that it then has. */
function amended(log: LogWriter, { changes }: SplitAnswer, at: number) {
  log.enter("plan.amended", { changes, reason: "best split", needs: 2 } as never, at);
  expect(log.folded.ignored).toEqual([]);
  const ledger = ledgerOf(log);
  return { ledger, finish: forecastOf(ledger, minute(at))?.finish };
}

describe("the best split of the rest of a walk", () => {
  it("[FIT3] leaves what is in work where it is, and replans the rest from now", () => {
    const log = LogWriter.started(FILE);
    const answer = answerAt(log, 6);
    expect(answer).toMatchObject({
      status: "proven",
      before: minutes(55),
      finish: minutes(45),
      bound: minutes(45),
    });
    // Nothing new may come before what somebody has begun ([WLK6]), so the task goes behind it as well.
    expect(answer.suggestions).toMatchObject([
      { kind: "performers", steps: ["wiring"], to: ["ev2"], gain: minutes(10) },
      { kind: "order", task: "wire", behind: "look", gain: null },
    ]);
    // The step in work may be done by others in the file, and is not.
    expect(answer.moved.map(({ step: id }) => id)).toEqual(["wiring", "end"]);
    expect(amended(log, answer, 6).finish).toBe(minutes(45));
  });

  it("[FIT3] goes by how long what is in work has taken, not by how long it should have", () => {
    const log = LogWriter.started(FILE).done(["looking", 10]);
    expect(answerAt(log, 12)).toMatchObject({ before: minutes(55), finish: minutes(47) });
    // Washing is overdue: what is left of it is nothing, and nobody knows more.
    expect(answerAt(log, 40)).toMatchObject({ before: minutes(75), finish: minutes(75) });
  });

  it("[FIT3] asks for the whole plan before the clock is started", () => {
    const answer = answerAt(LogWriter.opened(FILE), 3);
    expect(answer).toMatchObject({ status: "proven", before: minutes(55), finish: minutes(35) });
  });

  it("[FIT3] has nothing to choose when all that is left is in work, and when the walk is closed", () => {
    const log = LogWriter.started(FILE).done(["looking", 10], ["washing", 20], ["wiring", 50]);
    expect(answerAt(log, 52)).toMatchObject({ status: "unchanged", hasNoChoice: true, finish: minutes(55) });
    const closed = LogWriter.started(FILE).enter("walk.closed", { end: "terminated" }, 4);
    expect(answerAt(closed, 30)).toMatchObject({ hasNoChoice: true, changes: [] });
  });

  it("[FIT3] has no answer where the rest has no forecast", () => {
    const file = format2([task("late", [step("lit", "ev1", 10, { within: ["day"], or: [["ev2"]] })])], {
      windows: [{ id: "day", kind: "listed", spans: [{ from: "PT0S", to: "PT15M" }] }],
    });
    const log = LogWriter.started(file).enter("hold.called", { reason: "comm" }, 0);
    expect(answerAt(log, 20)).toMatchObject({ status: "no-plan", changes: [] });
  });

  it("[FIT3] knows who holds what now: a step goes with what was handed over by hand", () => {
    const file = format2(
      [
        task("long", [step("busy", "ev1", 40)]),
        task("kit", [
          step("use", "ev1", 10, { or: [["ev2"]], moves: [{ item: "kit", to: { crew: "ev1" } }] }),
          step("put", "ev1", 5, { or: [["ev2"]], moves: [{ item: "kit", to: { place: "lock" } }] }),
        ]),
        task("last", [step("end", ["ev1", "ev2"], 5)], { closeout: true }),
      ],
      {
        places: [{ id: "lock", refuge: true }],
        items: [{ id: "kit", start: { place: "lock" }, end: { place: "lock" } }],
      },
    );
    const log = LogWriter.started(file).enter("item.moved", { item: "kit", to: { crew: "ev2" } }, 2);
    const answer = answerAt(log, 3);
    expect(answer.finish).toBe(minutes(45));
    expect(answer.suggestions).toContainEqual(
      expect.objectContaining({ kind: "performers", steps: ["use", "put"], to: ["ev2"] }),
    );
    expect(amended(log, answer, 3).finish).toBe(minutes(45));
  });

  it("[FIT3] keeps amendments and contingencies that were brought in, and what was skipped", () => {
    const file = format2(FILE.tasks, {
      contingencies: [
        {
          id: "leak",
          title: "Leak",
          when: "a leak",
          tasks: [task("seal", [step("sealing", "ev1", 15)])],
        },
      ] as never,
    });
    const log = LogWriter.started(file)
      .enter(
        "plan.amended",
        { changes: [{ bring: "leak", behind: "washing" }], reason: "leak", needs: 2 } as never,
        4,
      )
      .enter("step.skipped", { step: "looking", reason: "no time" }, 5);
    const answer = answerAt(log, 6);
    expect(log.folded.ignored).toEqual([]);
    // Sealing stays behind washing; only the wire goes to the one who has nothing left.
    expect(answer).toMatchObject({ before: minutes(70), finish: minutes(41) });
    const { ledger, finish } = amended(log, answer, 6);
    expect(finish).toBe(minutes(41));
    expect(ledger.amendments).toHaveLength(2);
    expect(ledger.inForce.outline.step("sealing")?.step.by).toEqual(["ev1"]);
  });

  it("[FIT3] [WLK6] puts nothing new in front of what somebody has begun", () => {
    // The second task is under way while the first is not: it may not be given to whoever has gone past it.
    const file = format2([
      task("first", [step("slow", "ev1", 10), step("next", "ev1", 20, { or: [["ev2"]] })]),
      task("second", [step("quick", "ev2", 5)]),
    ]);
    const log = LogWriter.started(file);
    expect(answerAt(log, 2)).toMatchObject({ status: "unchanged", changes: [], finish: minutes(30) });
  });

  it("[AMD5] of two leads who enter the same answer, the second changes nothing", () => {
    const log = LogWriter.started(FILE);
    const answer = answerAt(log, 6);
    amended(log, answer, 6);
    const again = { changes: answer.changes, reason: "best split", needs: 2 };
    log.enter("plan.amended", again as never, 7, { source: "/devices/ground" });
    expect(forecastOf(ledgerOf(log), minute(7))?.finish).toBe(minutes(45));
    expect(answerAt(log, 7)).toMatchObject({ status: "unchanged", isProven: true });
  });
});
