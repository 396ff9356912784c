import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Trial } from "../../../src/app/what-if/trial.ts";
import {
  changesOf,
  findingsOf,
  freeRevision,
  isEmpty,
  NO_TRIAL,
  nextRevision,
  tried,
} from "../../../src/app/what-if/trial.ts";
import { checkOutline } from "../../../src/core/check/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { CrewId, DecisionId, Duration, StepId, TaskId } from "../../../src/core/units/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const MINUTE = 60_000;
const FILE = fileWith(
  [
    task("one", [
      step("a", "ev1", null, { time: { low: "PT8M", likely: "PT10M", high: "PT20M" } }),
      step("b", "ev2", 4, { after: ["a"] }),
    ]),
    task("two", [step("c", "ev1", 6, { after: ["b"] }), step("d", "iv", 0)]),
  ],
  { limits: { elapsed: "PT30M" } },
);
const outline = outlineOf(procedureOf(FILE));

const trialOf = (part: {
  times?: Record<string, number>;
  performers?: Record<string, string[]>;
  dropped?: string[];
}): Trial => ({
  ...NO_TRIAL,
  times: new Map(
    Object.entries(part.times ?? {}).map(([id, min]) => [id as StepId, (min * MINUTE) as Duration]),
  ),
  performers: new Map(
    Object.entries(part.performers ?? {}).map(([id, by]) => [id as StepId, by as CrewId[]]),
  ),
  dropped: new Set((part.dropped ?? []) as TaskId[]),
});
const result = (part: Parameters<typeof trialOf>[0]) => tried(FILE, outline, trialOf(part), {});
const finish = (part: Parameters<typeof trialOf>[0]) =>
  (result(part).plan?.timeline?.course.finish ?? Number.NaN) / MINUTE;

describe("what is tried on a plan", () => {
  it("[PLN1] nothing tried is the plan of the file", () => {
    expect(isEmpty(NO_TRIAL)).toBe(true);
    expect(changesOf(NO_TRIAL, outline)).toEqual([]);
    expect(tried(FILE, outline, NO_TRIAL, {}).plan?.timeline?.course.finish).toBe(
      planOf(outline).timeline?.course.finish,
    );
    expect(isEmpty(trialOf({ dropped: ["one"] }))).toBe(false);
  });

  it("[PLN1] everybody slower: every duration and every way, but not the one that is tried by itself", () => {
    const moving = fileWith(
      [task("out", [step("go", "ev1", null, { to: "boom" }), step("a", "ev1", 10), step("b", "ev1", 4)])],
      {
        crew: [{ id: "ev1", call: "EV1", station: "outside", start: "hatch" }],
        places: [{ id: "hatch", refuge: true }, { id: "boom" }],
        routes: [{ between: ["hatch", "boom"], length: 5, time: "PT10M" }],
      },
    );
    const of = (trial: Trial) =>
      (tried(moving, outlineOf(procedureOf(moving)), trial, {}).plan?.timeline?.course.finish ?? 0) / MINUTE;
    expect(of({ ...NO_TRIAL, pace: 150 })).toBe(36);
    expect(of({ ...trialOf({ times: { a: 2 } }), pace: 150 })).toBe(23);
    expect(isEmpty({ ...NO_TRIAL, pace: 150 })).toBe(false);
  });

  it("[PRO5] [PRO9] a decision otherwise, and a get-ahead brought in alone", () => {
    const decide = { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" };
    const branching = fileWith([
      task("one", [step("try", "ev1", 5, { decide }), step("force", "ev1", 7, { when: { bolt: "stuck" } })]),
      task("clean", [step("wipe", "ev1", 3)], { priority: "get-ahead" }),
      task("photo", [step("shoot", "ev1", 1)], { priority: "get-ahead" }),
    ]);
    const of = (trial: Trial) =>
      (tried(branching, outlineOf(procedureOf(branching)), trial, {}).plan?.timeline?.course.finish ?? 0) /
      MINUTE;
    expect(of(NO_TRIAL)).toBe(5);
    expect(of({ ...NO_TRIAL, outcomes: new Map([["bolt" as DecisionId, "stuck"]]) })).toBe(12);
    expect(of({ ...NO_TRIAL, broughtIn: new Set(["clean" as TaskId]) })).toBe(8);
  });

  it("[PLN5] a longer duration keeps the shares of low and high", () => {
    const [change] = changesOf(trialOf({ times: { a: 15 } }), outline);
    expect(change).toEqual({ change: "a", set: { time: { low: "PT12M", likely: "PT15M", high: "PT30M" } } });
    expect(finish({ times: { a: 15 } })).toBe(25);
  });

  it("[PLN5] a step of no time gets the one that is tried", () => {
    expect(changesOf(trialOf({ times: { d: 25 } }), outline)).toEqual([
      { change: "d", set: { time: "PT25M" } },
    ]);
    expect(finish({ times: { d: 25 } })).toBe(25);
  });

  test.prop([fc.constantFrom("a", "b", "c", "d"), fc.integer({ min: 0, max: 400 })], { numRuns: 100 })(
    "[PLN1] any duration that can be dragged to gives a procedure that can be read",
    (id, half) => {
      const { file, plan, problems } = result({ times: { [id]: half / 2 } });
      expect(problems.filter(({ level }) => level === "error")).toEqual([]);
      expect(file).not.toBeNull();
      const index = outline.step(id as StepId)?.index ?? -1;
      expect(plan?.whereabouts.times[index]?.likely).toBe((half / 2) * MINUTE);
    },
  );

  it("[PRO4] a task left out takes its steps along, and what came after them is let go", () => {
    const { file, plan } = result({ dropped: ["one"] });
    expect(file?.tasks.map(({ id }) => id)).toEqual(["two"]);
    expect((plan?.timeline?.course.finish ?? 0) / MINUTE).toBe(6);
    expect(FILE.tasks).toHaveLength(2);
  });

  it("[PLN1] somebody else does it; a duration and a performer are tried together", () => {
    const { file } = result({ times: { c: 7 }, performers: { c: ["ev2"] } });
    expect(file?.tasks[1]?.steps[0]).toMatchObject({ id: "c", by: ["ev2"] });
    expect(finish({ times: { c: 7 }, performers: { c: ["ev2"] } })).toBe(21);
  });

  it("[CHK4] all tasks left out cannot be read, and says so without throwing", () => {
    const { file, plan, problems } = result({ dropped: ["one", "two"] });
    expect([file, plan]).toEqual([null, null]);
    expect(problems.length).toBeGreaterThan(0);
  });

  it("[CHK1] findings that come and go are told apart from those that stay", () => {
    const before = checkOutline(outline);
    const over = result({ times: { a: 25 } });
    if (!over.outline) throw new Error("it can be read");
    const { new: fresh, gone } = findingsOf(before, over.outline);
    expect(fresh.map(({ code }) => code)).toContain("time/over-limit");
    expect(gone).toEqual([]);
    const back = findingsOf(checkOutline(over.outline), outline);
    expect(back.gone.map(({ code }) => code)).toContain("time/over-limit");
    expect(back.new).toEqual([]);
    expect(findingsOf(before, outline)).toEqual({ new: [], gone: [], same: before });
  });

  it.each([
    [undefined, "B"],
    ["A", "B"],
    ["Y", "Z"],
    ["Z", "Z-2"],
    ["Z-2", "Z-3"],
    ["3", "4"],
    ["9", "10"],
    ["1.9", "1.10"],
    ["rev 4", "rev 5"],
    ["draft", "draft-2"],
    ["a", "a-2"],
  ])("the revision after %s is %s", (revision, next) => {
    expect(nextRevision(revision)).toBe(next);
  });

  test.prop([fc.constantFrom(undefined, "A", "Y", "9", "draft", "x".repeat(40)), fc.nat({ max: 130 })])(
    "a revision that is saved never takes one that is on the shelf",
    (revision, count) => {
      const taken = new Set<string>();
      for (let saved = 0; saved <= count; saved += 1) {
        const free = freeRevision(revision, taken);
        expect(taken.has(free)).toBe(false);
        expect(free.length).toBeLessThanOrEqual(40);
        taken.add(free);
      }
      if (revision === "A") expect([...taken].slice(0, 2)).toEqual(["B", "C"].slice(0, count + 1));
    },
  );

  it("the next revision of a long one is still short enough to be read", () => {
    expect(nextRevision("x".repeat(40)).length).toBeLessThanOrEqual(40);
    expect(nextRevision("9".repeat(40)).length).toBeLessThanOrEqual(40);
    expect(nextRevision("9".repeat(30))).toMatch(/^[\d-]+$/);
  });
});
