import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { waitsBefore, waitsOf } from "../../../src/core/course/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { flownCourseOf, forecastOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { plainWaits } from "../planned-step.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const FILE = fileWith(
  [
    step("a", "ev1", 10),
    step("b", "ev2", 3),
    step("meet", ["ev1", "ev2"], 2),
    step("test", "iv", 1, { after: [{ step: "a", lag: "PT5M" }], within: ["contact"] }),
  ],
  { windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT30M", to: "PT60M" }] }] },
);

const flownWaits = (log: LogWriter, at: number, id: string) =>
  plainWaits(waitsBefore(flownCourseOf(log.ledger, minute(at)), id as StepId));

describe("why somebody waits", () => {
  it("[PLN3] [WLK3] [REV1] is one answer for the plan, the walk as it runs, and the walk as flown", () => {
    const running = LogWriter.started(FILE).done(["b", 3]);
    const forecast = forecastOf(running.ledger, minute(4));
    expect(forecast && plainWaits(waitsBefore(forecast, "meet" as StepId))).toEqual([
      { crew: "ev2", time: minutes(7), on: { crew: ["ev1"], step: "a" } },
    ]);
    expect(walkStateAt(running.ledger, minute(4)).lanes[1]?.waitingOn).toMatchObject([
      { kind: "crew", crew: "ev1", step: "a", until: minutes(10) },
    ]);
    running.done(["a", 12], ["meet", 15]);
    expect(flownWaits(running, 20, "meet")).toEqual([
      { crew: "ev2", time: minutes(9), on: { crew: ["ev1"], step: "a" } },
    ]);
  });

  it("[PLN3] is divided where what binds it changes, as the running walk says it at each moment", () => {
    const log = LogWriter.started(FILE).done(["b", 3], ["a", 12]);
    const kinds = [4, 14, 20].map((at) =>
      walkStateAt(
        LogWriter.started(FILE).done(["b", 3], ...(at > 12 ? [["a", 12] as const] : [])).ledger,
        minute(at),
      ).lanes[2]?.waitingOn.map(({ kind }) => kind),
    );
    expect(kinds).toEqual([["crew"], ["lag", "window"], ["window"]]);
    log.done(["meet", 15], ["test", 31]);
    expect(flownWaits(log, 40, "test")).toEqual([
      { crew: "iv", time: minutes(12), on: { crew: ["ev1"], step: "a" } },
      { crew: "iv", time: minutes(5), on: { lag: "a" } },
      { crew: "iv", time: minutes(13), on: { window: "contact" } },
    ]);
  });

  it("[PLN3] [WLK3] [REV1] names the window that is closed, in plan, forecast, running walk and review alike", () => {
    const two = fileWith(
      [step("a", "ev1", 5), step("call", "iv", 5, { after: ["a"], within: ["contact", "day"] })],
      {
        windows: [
          {
            id: "contact",
            kind: "listed",
            spans: [
              { from: "PT0M", to: "PT12M" },
              { from: "PT190M30S", to: "PT203M" },
            ],
          },
          { id: "day", kind: "listed", spans: [{ from: "PT180M", to: "PT240M" }] },
        ],
      },
    );
    // Contact is open when the step is ready: the day is waited for, and contact for the last 10.5 min only.
    const expected = [
      { crew: "iv", time: minutes(5), on: { crew: ["ev1"], step: "a" } },
      { crew: "iv", time: minutes(175), on: { window: "day" } },
      { crew: "iv", time: minutes(10.5), on: { window: "contact" } },
    ];
    const plan = planOf(outlineOf(procedureOf(two))).timeline;
    expect(plan && plainWaits(waitsBefore(plan.course, "call" as StepId))).toEqual(expected);
    const log = LogWriter.started(two).done(["a", 5]);
    for (const at of [6, 100, 185]) {
      const forecast = forecastOf(log.ledger, minute(at));
      expect(forecast && plainWaits(waitsBefore(forecast, "call" as StepId))).toEqual(expected);
    }
    const nowOn = (at: number) => walkStateAt(log.ledger, minute(at)).lanes[2]?.waitingOn;
    expect(nowOn(100)).toEqual([{ kind: "window", window: "day", until: minutes(180) }]);
    expect(nowOn(179)).toEqual([{ kind: "window", window: "day", until: minutes(180) }]);
    expect(nowOn(185)).toEqual([{ kind: "window", window: "contact", until: minutes(190.5) }]);
    log.done(["call", 196]);
    expect(flownWaits(log, 200, "call")).toEqual(expected);
  });

  it("[PLN3] [PRO17] [WLK3] [REV1] is the PET before which a step does not start, in plan, forecast, walk and review", () => {
    const set = (within: string[]) =>
      fileWith([step("a", "ev1", 5), step("call", "iv", 5, { after: ["a"], notBefore: "PT20M", within })], {
        format: "tetherline.procedure/2",
        windows: [{ id: "day", kind: "listed", spans: [{ from: "PT30M", to: "PT60M" }] }],
      });
    const expected = [
      { crew: "iv", time: minutes(5), on: { crew: ["ev1"], step: "a" } },
      { crew: "iv", time: minutes(15), on: { notBefore: minutes(20) } },
      { crew: "iv", time: minutes(10), on: { window: "day" } },
    ];
    const plan = planOf(outlineOf(procedureOf(set(["day"])))).timeline;
    expect(plan && plainWaits(waitsBefore(plan.course, "call" as StepId))).toEqual(expected);
    const log = LogWriter.started(set(["day"])).done(["a", 5]);
    const forecast = forecastOf(log.ledger, minute(6));
    expect(forecast && plainWaits(waitsBefore(forecast, "call" as StepId))).toEqual(expected);
    const nowOn = (at: number) => walkStateAt(log.ledger, minute(at)).lanes[2]?.waitingOn;
    expect(nowOn(6)).toEqual([{ kind: "notBefore", until: minutes(20) }]);
    expect(nowOn(20)).toEqual([{ kind: "window", window: "day", until: minutes(30) }]);
    log.done(["call", 36]);
    expect(flownWaits(log, 40, "call")).toEqual(expected);
    // A hold in force is told first. Whoever began before the PET did not wait for it.
    const held = LogWriter.started(set([])).done(["a", 5]).enter("hold.called", { reason: "looking" }, 6);
    expect(walkStateAt(held.ledger, minute(25)).lanes[2]?.waitingOn.map(({ kind }) => kind)).toEqual([
      "hold",
    ]);
    const early = LogWriter.started(set([])).done(["a", 5], ["call", 12]);
    expect(flownWaits(early, 40, "call").map(({ on }) => on)).toEqual([{ crew: ["ev1"], step: "a" }, null]);
  });

  it("[PLN3] is the person's before the hold's where both last at once: timeline and review agree", () => {
    const log = LogWriter.started(FILE)
      .done(["b", 3])
      .enter("hold.called", { reason: "looking" }, 5)
      .done(["a", 12])
      .enter("hold.lifted", {}, 20);
    const expected = [
      { crew: "ev2", time: minutes(9), on: { crew: ["ev1"], step: "a" } },
      { crew: "ev2", time: minutes(8), on: { hold: true } },
    ];
    const forecast = forecastOf(log.ledger, minute(21));
    const ofEv2 = (waits: ReturnType<typeof plainWaits>) => waits.filter(({ crew }) => crew === "ev2");
    expect(forecast && ofEv2(plainWaits(waitsBefore(forecast, "meet" as StepId)))).toEqual(expected);
    log.done(["meet", 23]);
    expect(ofEv2(flownWaits(log, 30, "meet"))).toEqual(expected);
  });

  it("[PLN3] says when nothing kept somebody from starting", () => {
    const log = LogWriter.started(fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]))
      .done(["a", 5])
      .enter("step.started", { step: "b" }, 9)
      .done(["b", 12]);
    expect(flownWaits(log, 12, "b")).toEqual([{ crew: "ev1", time: minutes(4), on: null }]);
  });

  it("[WLK4] names nobody whose step came too late to let this one go", () => {
    const log = LogWriter.started(FILE)
      .done(["b", 3])
      .enter("step.done", { step: "meet", outOfOrder: true }, 8)
      .done(["a", 12]);
    expect(flownWaits(log, 20, "meet").filter(({ on }) => on !== null)).toEqual([]);
  });

  const CREW = ["ev1", "ev2", "iv"];
  test.prop([
    fc.array(fc.tuple(fc.subarray(CREW, { minLength: 1 }), fc.nat({ max: 9 }), fc.nat({ max: 20 })), {
      minLength: 1,
      maxLength: 10,
    }),
    fc.array(fc.tuple(fc.nat({ max: 60 }), fc.nat({ max: 10 })), { maxLength: 2 }),
  ])("[PLN3] fills every gap of every lane of any walk as flown, without overlap", (drawn, holds) => {
    const file = fileWith(drawn.map(([by, length], index) => step(`s${index}`, by, length)));
    const log = LogWriter.started(file);
    let at = 0;
    for (const [index, [, length, pause]] of drawn.entries()) {
      const [hold] = holds.slice(index, index + 1);
      if (hold) log.enter("hold.called", {}, at + 0.5).enter("hold.lifted", {}, at + 0.5 + hold[1]);
      at += length + pause + 1 + (hold?.[1] ?? 0);
      log.done([`s${index}`, at]);
    }
    const course = flownCourseOf(log.ledger, minute(at));
    for (const member of CREW) {
      const busy = [...course.steps.values()]
        .filter(({ step: id }) => course.outline.step(id)?.step.by.some((one) => one === member))
        .map(({ start, finish }) => ({ start, finish }));
      const waits = waitsOf(course).filter(({ crew }) => crew === member);
      const all = [...busy, ...waits.map(({ from, to }) => ({ start: from, finish: to }))]
        .filter(({ start, finish }) => finish > start)
        .sort((a, b) => a.start - b.start);
      let free = 0;
      for (const { start, finish } of all) {
        expect(start).toBe(free);
        free = finish;
      }
    }
  });
});
