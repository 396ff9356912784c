import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Course, CourseStep } from "../../../src/core/course/index.ts";
import { marginOf } from "../../../src/core/course/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { forecastOf, nextPlayedMove, playedTimesOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, progressInOrder } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const FILE = fileWith(
  [
    task("main", [
      step("a1", "ev1", 5),
      step("a2", "ev1", 4),
      step("b1", "ev2", 3),
      step("meet", ["ev1", "ev2"], 2),
      step("c1", "iv", 2, { after: [{ step: "b1", lag: "PT6M" }] }),
    ]),
    task("spare", [step("x", "ev1", 9), step("y", "ev1", 1)], { priority: "get-ahead" }),
    task("last", [step("end", ["ev1", "iv"], 1)]),
  ],
  { limits: { elapsed: "PT30M" } },
);

/** The steps of a course in reading order; none without one. */
const stepsOf = (course: Course | null | undefined): CourseStep[] => [...(course?.steps.values() ?? [])];

const timesOf = (course: Course | null | undefined) =>
  stepsOf(course).map(({ step: id, start, finish }) => [id, start, finish]);

/** Start, finish and stage of each step in minutes of PET. */
function brief(log: LogWriter, at: number): Record<string, readonly [number, number, string]> {
  const { ledger } = log;
  return Object.fromEntries(
    stepsOf(forecastOf(ledger, minute(at))).map((one) => [
      one.step,
      [inMinutes(one.start), inMinutes(one.finish), one.stage] as const,
    ]),
  );
}

const whole = (log: LogWriter, at: number): Course => {
  const forecast = forecastOf(log.ledger, minute(at));
  if (!forecast) throw new Error("no forecast");
  return forecast;
};

describe("the forecast", () => {
  it("[FOR1] keeps what is done, lets what is in work take its likely time, and plans the rest from there", () => {
    const log = LogWriter.started(FILE).done(["b1", 2]);
    expect(brief(log, 3)).toEqual({
      a1: [0, 5, "in-work"],
      a2: [5, 9, "planned"],
      b1: [0, 2, "done"],
      meet: [9, 11, "planned"],
      c1: [8, 10, "planned"],
      end: [11, 12, "planned"],
    });
    expect([whole(log, 3).finish, marginOf(whole(log, 3))].map((one) => inMinutes(one ?? -1))).toEqual([
      12, 18,
    ]);
  });

  it("[FOR1] lets a step in work that is overdue finish now, and starts nothing before now", () => {
    const log = LogWriter.started(FILE).done(["b1", 2]);
    expect(brief(log, 8)["a1"]).toEqual([0, 8, "in-work"]);
    expect(brief(log, 8)["a2"]).toEqual([8, 12, "planned"]);
    expect(brief(log, 9)["c1"]).toEqual([8, 10, "in-work"]);
  });

  it("[FOR1] [PRO1] lets nobody do two steps at once after a step was skipped ahead or done out of order", () => {
    const file = fileWith([
      task("main", [step("one", "ev1", 5), step("two", "ev1", 4), step("three", "ev1", 3)]),
    ]);
    const skipped = LogWriter.started(file).enter("step.skipped", { step: "two", reason: "not needed" }, 1);
    expect(brief(skipped, 2)).toEqual({
      one: [0, 5, "in-work"],
      two: [1, 1, "skipped"],
      three: [5, 8, "planned"],
    });
    const early = LogWriter.started(file).enter("step.done", { step: "two", outOfOrder: true }, 4);
    expect(brief(early, 4)["three"]).toEqual([5, 8, "planned"]);
  });

  it("[FOR1] tells how far each lane is behind its plan: forecast − planned finish of its step", () => {
    const behind = (log: LogWriter, at: number) =>
      walkStateAt(log.ledger, minute(at)).lanes.map((lane) =>
        lane.behind === null ? null : inMinutes(lane.behind),
      );
    const log = LogWriter.started(FILE);
    expect(behind(log, 0)).toEqual([0, 0, 0]);
    expect(behind(log, 6)).toEqual([1, 3, 3]);
    log.done(["b1", 7], ["a1", 7]);
    // EV1's next step is 2 min late, EV2 waits for it; IV's lag now ends at 13 min.
    expect(behind(log, 7)).toEqual([2, 2, 4]);
    log
      .done(["a2", 8], ["meet", 9])
      .enter("step.skipped", { step: "x" }, 9)
      .enter("step.skipped", { step: "y" }, 9);
    log.done(["c1", 13]);
    expect(behind(log, 13)).toEqual([2, -2, 2]);
  });

  it("[FOR1] [PRO9] leaves get-aheads out until they are begun", () => {
    const log = LogWriter.started(FILE).done(["b1", 3], ["a1", 5], ["a2", 9]);
    expect(Object.keys(brief(log, 9))).not.toContain("x");
    log.done(["meet", 11]);
    expect(brief(log, 12)["x"]).toEqual([11, 20, "in-work"]);
    expect(brief(log, 12)).not.toHaveProperty("y");
  });

  it("[FOR1] before the clock starts is the plan", () => {
    const log = LogWriter.opened(FILE);
    const { timeline } = planOf(log.ledger.inForce.outline);
    expect(timesOf(whole(log, 0))).toEqual(timesOf(timeline?.course));
  });

  it("[FOR1] of a closed walk is what was done, and stands still", () => {
    const log = LogWriter.started(FILE).done(["a1", 6]).enter("walk.closed", { end: "aborted" }, 7);
    expect(brief(log, 90)).toEqual({ a1: [0, 6, "done"] });
    expect(brief(log, 90)).toEqual(brief(log, 8));
    expect(whole(log, 90).finish).toBe(whole(log, 8).finish);
  });

  it("[FOR1] is not made when a step to come fits no window any more", () => {
    const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 5, { within: ["contact"] })], {
      windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT0M", to: "PT20M" }] }],
    });
    const log = LogWriter.started(file);
    expect(forecastOf(log.ledger, minute(15))).not.toBeNull();
    expect(forecastOf(log.ledger, minute(16))).toBeNull();
    expect(walkStateAt(log.ledger, minute(16)).forecast).toBeNull();
  });

  const CREW = ["ev1", "ev2", "iv"];
  const anyFile: fc.Arbitrary<ProcedureFile> = fc
    .array(
      fc.record({
        by: fc.subarray(CREW, { minLength: 1 }),
        minutes: fc.nat({ max: 12 }),
        after: fc.array(fc.tuple(fc.integer({ min: 1, max: 5 }), fc.constantFrom(0, 4)), { maxLength: 2 }),
        within: fc.constantFrom<string[]>([], [], [], ["light"]),
      }),
      { minLength: 1, maxLength: 12 },
    )
    .map((drawn) =>
      fileWith(
        drawn.map(({ by, minutes, after, within }, index) =>
          step(`s${index}`, by, minutes, {
            within,
            after: after
              .filter(([back]) => back <= index)
              .map(([back, lag]) => ({ step: `s${index - back}`, lag: `PT${lag}M` })),
          }),
        ),
        {
          windows: [
            {
              id: "light",
              kind: "daylight",
              spans: [
                { from: "PT3M", to: "PT16M" },
                { from: "PT25M", to: "P2D" },
              ],
            },
          ],
        },
      ),
    );

  test.prop([anyFile])("[FOR1] at PET 0 is the plan", (file) => {
    const log = LogWriter.started(file);
    const plan = planOf(log.ledger.inForce.outline);
    const forecast = whole(log, 0);
    expect(forecast.finish).toBe(plan.timeline?.course.finish);
    expect(timesOf(forecast)).toEqual(timesOf(plan.timeline?.course));
  });

  test.prop([anyFile, fc.nat({ max: 60 })])(
    "[FOR1] of a walk where nothing more happens only ever moves later",
    (file, at) => {
      const log = LogWriter.started(file);
      expect(whole(log, at + 1).finish).toBeGreaterThanOrEqual(whole(log, at).finish);
    },
  );

  test.prop([anyFile, fc.nat()])(
    "[FOR1] [WLK2] of a walk that goes exactly as planned is the plan, to the end",
    (file) => {
      const log = LogWriter.started(file);
      const { timeline } = planOf(log.ledger.inForce.outline);
      const planned = stepsOf(timeline?.course);
      const { order = [], outline } = timeline?.course.network ?? {};
      const placeOf = (one: CourseStep) => order.indexOf(outline?.step(one.step)?.index ?? -1);
      const byFinish = [...planned].sort((a, b) => a.finish - b.finish || placeOf(a) - placeOf(b));
      for (const { step: id, finish } of byFinish) {
        log.done([id, inMinutes(finish)]);
        expect(whole(log, inMinutes(finish)).finish).toBe(timeline?.course.finish);
      }
      expect(log.reasons).toEqual([]);
      expect(progressInOrder(log.ledger).map(({ start, finish }) => [start, finish])).toEqual(
        planned.map(({ start, finish }) => [minute(inMinutes(start)), minute(inMinutes(finish))]),
      );
      expect(log.ledger.lanes.every(({ next }) => next === null)).toBe(true);
    },
  );
});

describe("a played crew", () => {
  it("takes records within their limits, confirms, decides as expected, and does every step in order", () => {
    const file = fileWith([
      step("a", "ev1", null, {
        time: { low: "PT1M", likely: "PT2M", high: "PT5M" },
        records: [{ id: "turns", min: 6, max: 8 }, { id: "free" }, { id: "least", min: 4 }],
        confirm: { by: "iv", text: "Seen" },
        decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("b", "ev1", 1, { when: { bolt: "stuck" } }),
      step("c", ["ev1", "ev2"], 1),
    ]);
    const log = LogWriter.started(file);
    const times = playedTimesOf(4);
    const names: string[] = [];
    for (
      let move = nextPlayedMove(log.ledger, times, minute(0));
      move;
      move = nextPlayedMove(log.ledger, times, move.at)
    ) {
      for (const { name, data, at } of move.drafts) {
        names.push(`${name} ${JSON.stringify(data)}`);
        log.enter(name, data, inMinutes(at - minute(0)));
      }
    }
    expect(names).toEqual([
      'record.taken {"step":"a","record":"turns","value":7}',
      'record.taken {"step":"a","record":"free","value":1}',
      'record.taken {"step":"a","record":"least","value":4}',
      'confirm.given {"step":"a"}',
      'decision.taken {"decision":"bolt","outcome":"free"}',
      'step.done {"step":"a"}',
      'step.done {"step":"c"}',
    ]);
    expect(log.reasons).toEqual([]);
    expect(log.folded.deviations).toEqual([]);
  });

  test.prop([fc.nat()])(
    "[AMD1] takes as long for the steps that stay when others are added or dropped",
    (seed) => {
      const time = { low: "PT2M", likely: "PT5M", high: "PT20M" };
      const all = ["a", "b", "c", "d"].map((id) => step(id, "ev1", null, { time }));
      const log = LogWriter.started(fileWith(all));
      const times = playedTimesOf(seed);
      const lengthsOf = ({ ledger }: LogWriter) =>
        new Map(ledger.inForce.outline.steps.map((entry) => [entry.step.id as string, times(ledger, entry)]));
      const before = lengthsOf(log);
      const changes = [{ add: step("n", "ev1", null, { time }), behind: "a" }, { drop: "b" }];
      log.enter("plan.amended", { changes, reason: "" }, 1);
      const after = lengthsOf(log);
      expect([...after.keys()]).toEqual(["a", "n", "c", "d"]);
      for (const id of ["a", "c", "d"]) expect(after.get(id)).toBe(before.get(id));
      expect(after.get("n")).not.toBe(after.get("a"));
    },
  );

  it("does nothing before the clock starts, in a hold, or when all is done", () => {
    const file = fileWith([step("a", "ev1", 1)]);
    const moves = (log: LogWriter) => nextPlayedMove(log.ledger, playedTimesOf(1), minute(9));
    expect(moves(LogWriter.opened(file))).toBeNull();
    expect(moves(LogWriter.started(file).enter("hold.called", {}, 0))).toBeNull();
    expect(moves(LogWriter.started(file).done(["a", 1]))).toBeNull();
    expect(moves(LogWriter.started(file))?.at).toBe(minute(9));
  });

  it("[PRO9] sees a get-ahead through once it has begun it, however late it gets", () => {
    const file = fileWith(
      [
        task("main", [step("a", "ev1", 1)]),
        task("spare", [step("x", "ev1", 2), step("y", "ev1", 2)], { priority: "get-ahead" }),
      ],
      { limits: { elapsed: "PT30M" } },
    );
    const moves = (log: LogWriter, at: number) =>
      nextPlayedMove(log.ledger, playedTimesOf(1), minute(at))?.drafts.map(({ name }) => name);
    expect(moves(LogWriter.started(file).done(["a", 1]), 1)).toEqual(["step.done"]);
    expect(moves(LogWriter.started(file).done(["a", 20]), 20)).toEqual(["step.skipped", "step.skipped"]);
    expect(moves(LogWriter.started(file).done(["a", 1], ["x", 20]), 20)).toEqual(["step.done"]);
  });
});
