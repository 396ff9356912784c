import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { checkOutline } from "../../../src/core/check/index.ts";
import type { Course } from "../../../src/core/course/index.ts";
import { planOf, returnPlanAt } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { turnBackState, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

const MORE: Partial<ProcedureFile> = {
  format: "tetherline.procedure/2",
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "mast" }],
  routes: [{ between: ["lock", "mast"], length: 8, time: "PT4M" }],
  limits: { elapsed: "PT3H" },
};
const OUT = [step("ev1-out", "ev1", null, { to: "mast" }), step("bolt", "ev1", 10, { at: "mast" })];
const IN = step("ev1-in", "ev1", null, { to: "lock" });
const following = (id: string, within: string, more: object = {}) => [{ step: id, within, ...more }];
const fileOf = (closeout: FileStep[], work: FileStep[] = [], more: Partial<ProcedureFile> = {}) =>
  fileWith([task("work", [...OUT, ...work]), task("home", closeout, { closeout: true })], {
    ...MORE,
    ...more,
  });
const courseOf = (file: ProcedureFile): Course => {
  const { timeline, findings } = planOf(outlineOf(procedureOf(file)));
  if (!timeline) throw new Error(findings.map(({ code }) => code).join(" "));
  return timeline.course;
};
/** The starts of closeout, in minutes from when the work is broken off, with the return time and what is broken. */
const homeAt = (file: ProcedureFile, pet: number) => {
  const plan = returnPlanAt(courseOf(file), minutes(pet));
  if (!plan) throw new Error("no return");
  return {
    starts: Object.fromEntries([...plan.steps].map(([id, { start }]) => [id, inMinutes(start) - pet])),
    total: inMinutes(plan.total),
    broken: plan.broken.map(({ bound, over }) => [bound.step, inMinutes(over)]),
  };
};

describe("what must follow within a time on the way home", () => {
  it("[PLN6] [PRO17] puts the step off that it has to follow, no more than needed", () => {
    // IV warms the lock up, and the repress has to begin at most a minute after; EV1 needs four to get there.
    const closeout = (within: string) => [
      step("warm", "iv", 1, { after: ["bolt"] }),
      IN,
      step("repress", ["ev1", "iv"], 5, { after: following("warm", within) }),
    ];
    expect(homeAt(fileOf(closeout("PT1M")), 14)).toEqual({
      starts: { warm: 2, "ev1-in": 0, repress: 4 },
      total: 9,
      broken: [],
    });
    expect(homeAt(fileOf(closeout("PT30M")), 14).starts["warm"]).toBe(0);
  });

  it("[PLN6] [PRO17] puts a whole chain off, and keeps the lag that it has", () => {
    const file = fileOf([
      step("warm", "iv", 1, { after: ["bolt"] }),
      step("tell", "iv", 1, { after: following("warm", "PT0M") }),
      IN,
      step("repress", ["ev1", "iv"], 5, { after: following("tell", "PT2M", { lag: "PT1M" }) }),
    ]);
    expect(homeAt(file, 14)).toEqual({
      starts: { warm: 0, tell: 1, "ev1-in": 0, repress: 4 },
      total: 9,
      broken: [],
    });
    const tight = fileOf([
      step("warm", "iv", 1, { after: ["bolt"] }),
      step("tell", "iv", 1, { after: following("warm", "PT0M") }),
      IN,
      step("repress", ["ev1", "iv"], 5, { after: following("tell", "PT0M") }),
    ]);
    expect(homeAt(tight, 14)).toEqual({
      starts: { warm: 2, tell: 3, "ev1-in": 0, repress: 4 },
      total: 9,
      broken: [],
    });
  });

  it("[PLN6] [PRO17] says by how much it cannot be kept, and puts nothing off for it", () => {
    const file = fileOf([
      step("purge", "ev1", 2, { at: "mast" }),
      IN,
      step("check", "ev1", 1, { after: following("purge", "PT3M") }),
    ]);
    expect(homeAt(file, 14)).toEqual({
      starts: { purge: 0, "ev1-in": 2, check: 6 },
      total: 7,
      broken: [["check", 1]],
    });
    const findings = checkOutline(outlineOf(procedureOf(file))).filter(
      ({ code }) => code === "time/return-breaks",
    );
    expect(findings.map((one) => [one.level, one.pointer, inWords(one.message)])).toEqual([
      [
        "caution",
        "/tasks/1/steps/2/after/0",
        'Broken off at the end of "ev1-out", PET 0:04:00: On the way home "check" starts more than 3 min after "purge": 60 s too late.',
      ],
    ]);
  });

  it("[PLN6] [PRO17] counts from a step that is done already, and not from one that is left out", () => {
    const work = [step("purge", "ev1", 2, { at: "mast" }), step("wipe", "ev1", 20, { at: "mast" })];
    const closeout = [IN, step("check", "ev1", 1, { after: following("purge", "PT10M") })];
    const file = fileOf(closeout, work);
    expect(homeAt(file, 14).broken).toEqual([]);
    expect(homeAt(file, 16).broken).toEqual([]);
    expect(homeAt(file, 36).broken).toEqual([["check", 14]]);
  });

  it("[PLN6] [PRO17] puts off into a span of its windows, or not at all where none is left", () => {
    const closeout = [
      step("warm", "iv", 1, { after: ["bolt"], within: ["quiet"] }),
      IN,
      step("repress", ["ev1", "iv"], 5, { after: following("warm", "PT1M") }),
    ];
    const quiet = (...spans: [number, number][]): Partial<ProcedureFile> => ({
      windows: [
        {
          id: "quiet",
          kind: "listed",
          spans: spans.map(([from, to]) => ({ from: `PT${from}M`, to: `PT${to}M` })),
        },
      ],
    });
    expect(homeAt(fileOf(closeout, [], quiet([0, 15], [20, 40])), 14)).toMatchObject({
      starts: { warm: 6, repress: 7 },
      broken: [],
    });
    expect(homeAt(fileOf(closeout, [], quiet([0, 15])), 14)).toMatchObject({
      starts: { warm: 0, repress: 4 },
      broken: [["repress", 2]],
    });
  });

  it("[PLN6] [PRO17] says what is done later than its PET", () => {
    const file = fileOf([IN, step("seal", ["ev1", "iv"], 3, { doneBy: "PT20M" })]);
    expect(homeAt(file, 13).broken).toEqual([]);
    expect(homeAt(file, 14).broken).toEqual([["seal", 1]]);
  });

  it("[PLN6] [PRO17] is told on the day, from the steps that are done", () => {
    const file = fileOf(
      [IN, step("check", "ev1", 1, { after: following("purge", "PT10M") })],
      [step("purge", "ev1", 2, { at: "mast" })],
    );
    const log = LogWriter.started(file).done(["ev1-out", 4], ["bolt", 14], ["purge", 16]);
    const brokenAt = (pet: number) => turnBackState(walkStateAt(log.ledger, minute(pet))).returnPlan?.broken;
    expect(brokenAt(20)).toEqual([]);
    // EV1 is overdue on the way, so that the longest time home counts that may come out.
    expect(brokenAt(25)).toEqual([
      { bound: { step: "check", after: "purge", within: minutes(10) }, over: minutes(5.5) },
    ]);
  });

  const chain = fc.array(
    fc.record({
      by: fc.constantFrom("ev1", "iv"),
      long: fc.nat({ max: 8 }),
      back: fc.integer({ min: 1, max: 4 }),
      within: fc.option(fc.nat({ max: 12 }), { nil: null }),
    }),
    { minLength: 2, maxLength: 9 },
  );
  test.prop([chain, fc.nat({ max: 30 })])(
    "[PLN6] [PRO17] is never over before the way home that heeds no such time, and tells exactly what it breaks",
    (drawn, pet) => {
      const closeout = (isBound: boolean) =>
        drawn.map(({ by, long, back, within }, index) => {
          const named = drawn[index - back] ? `c${index - back}` : null;
          const link =
            named === null
              ? []
              : [isBound && within !== null ? { step: named, within: `PT${within}M` } : named];
          return step(`c${index}`, by, long, { after: link });
        });
      const course = courseOf(fileOf(closeout(true)));
      const plan = returnPlanAt(course, minutes(pet));
      const free = returnPlanAt(courseOf(fileOf(closeout(false))), minutes(pet));
      if (!plan || !free) throw new Error("no return");
      for (const [id, { start }] of free.steps)
        expect(plan.steps.get(id)?.start ?? -1).toBeGreaterThanOrEqual(start);
      const late = drawn.flatMap(({ back, within }, index) => {
        const named = `c${index - back}` as StepId;
        const [a, b] = [
          plan.steps.get(named) ?? course.steps.get(named),
          plan.steps.get(`c${index}` as StepId),
        ];
        return a && b && within !== null && b.start > a.finish + minutes(within) ? [`c${index}`] : [];
      });
      expect(plan.broken.map(({ bound }) => bound.step)).toEqual(late);
    },
  );
});
