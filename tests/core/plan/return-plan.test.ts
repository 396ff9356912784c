import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Course } from "../../../src/core/course/index.ts";
import { latestTurnBack, planOf, returnPlanAt } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf, readProcedure } from "../../../src/core/procedure/index.ts";
import type { CrewId, Duration, StepId } from "../../../src/core/units/index.ts";
import { clockText, inMinutes } from "../../../src/core/units/index.ts";
import { minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";
import type { Spot } from "./broken-off.ts";
import { finishBrokenOff } from "./broken-off.ts";

const courseOf = (file: ProcedureFile): Course => {
  const { timeline, findings } = planOf(outlineOf(procedureOf(file)));
  if (!timeline) throw new Error(findings.map(({ code }) => code).join(" "));
  return timeline.course;
};
const back = (course: Course, pet: number) => {
  const plan = returnPlanAt(course, minutes(pet));
  return plan && inMinutes(plan.total);
};

const MORE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "ev2", call: "EV2", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "mast" }, { id: "head" }, { id: "fin" }],
  routes: [
    { between: ["lock", "mast"], length: 10, time: "PT4M" },
    { between: ["mast", "head"], length: 10, time: "PT6M" },
    { between: ["lock", "fin"], length: 10, time: "PT3M" },
  ],
  limits: { elapsed: "PT2H" },
};
const WORK = task("work", [
  step("ev1-out", "ev1", null, { to: "mast" }),
  step("ev1-up", "ev1", null, { to: "head" }),
  step("bolt", "ev1", 20, { at: "head" }),
  step("ev1-down", "ev1", null, { to: "mast" }),
  step("ev2-out", "ev2", null, { to: "fin" }),
  step("valve", "ev2", 30, { at: "fin" }),
]);

describe("the return plan", () => {
  it("[PLN6] of the ranging head takes 1 h 06 min 15 s from the fin, all of the closeout that is planned", () => {
    const text = readFileSync("procedures/osier-ranging-head.procedure.json", "utf8");
    const { procedure } = readProcedure(text);
    const course = procedure && planOf(outlineOf(procedure)).timeline?.course;
    const done = course?.steps.get("ev1-stow-driver" as StepId)?.finish;
    if (!course || done === undefined) throw new Error("the ranging head has no plan");
    const plan = returnPlanAt(course, done);
    if (!plan) throw new Error("the ranging head has no return");
    // Both are at the fin. By hand, in minutes: fin-count 3, ev2-to-s2 3.5 and only then ev1-to-p2 2.25,
    // ev1-anchor-p2-home 3, ev1-take-case-home 1.5, ev1-to-hatch 4, ev1-anchor-home 2.5 (EV2 is there by then),
    // outside-count 4, ev2-open-cover 1.5, hand-loads-in 3, ev1-last-look 3 (EV2 goes in meanwhile), ev1-in 0.5,
    // ev1-hook-lock 1.5, close-hatch 4, inside-count 4, before-repress 3, repress-go 1, repress-to-35 4, leak-check 5,
    // ears 1, repress-full 10, walk-closed 1: together 66.25.
    expect(inMinutes(plan.total)).toBe(66.25);
    const limit = course.outline.procedure.limits.elapsed as Duration;
    expect(clockText(latestTurnBack(course, plan, limit))).toBe("5:23:45");
    expect(plan.crew.map(({ from, refuge }) => [from, refuge])).toEqual([
      ["fin-root", "lock"],
      ["fin-root", "lock"],
    ]);
  });

  const file = fileWith(
    [
      WORK,
      task(
        "home",
        [
          step("count", ["ev1", "ev2", "iv"], 2, { at: "mast" }),
          step("in-1", "ev1", 5, { to: "lock" }),
          step("in-2", "ev2", null, { to: "lock", after: [{ step: "in-1", lag: "PT1M" }] }),
          step("seal", ["ev1", "ev2", "iv"], 7, { at: "lock" }),
        ],
        { closeout: true },
      ),
    ],
    MORE,
  );
  const course = courseOf(file);

  it("[PLN6] waits for the partner, goes by the time written where that is longer, and keeps lags", () => {
    // At 30 EV1 is at the head, EV2 at the fin. EV1 is at the mast after 6 and EV2 after 7; count 2 (9), in-1 5 (14),
    // lag 1 (15), in-2 4 (19), seal 7 (26).
    expect(back(course, 30)).toBe(26);
    const plan = returnPlanAt(course, minutes(30));
    expect(plan?.crew.map(({ crew, way, home }) => [crew, inMinutes(way), inMinutes(home)])).toEqual([
      ["ev1", 6, 56],
      ["ev2", 7, 56],
    ]);
  });

  it("[PLN6] lets go what is in work, and runs a closeout step that is in work from its beginning", () => {
    // Both are at the mast: the procedure has EV2 come there without a step of its own.
    const count = course.steps.get("count" as StepId);
    const during = inMinutes(count?.start ?? Number.NaN) + 1;
    expect(back(course, during)).toBe(2 + 5 + 1 + 4 + 7);
  });

  it("[PLN6] counts the part of a way that is walked, from whichever end is quicker", () => {
    const alone = courseOf(
      fileWith(
        [task("work", [step("up", "ev1", null, { to: "head" }), step("bolt", "ev1", 9, { at: "head" })])],
        { ...MORE, crew: (MORE.crew ?? []).slice(0, 1) },
      ),
    );
    // Nothing of closeout: the quickest way to a refuge, after 3 of 10 minutes, 8 of 10, and from the head.
    expect(back(alone, 3)).toBe(3);
    expect(back(alone, 8)).toBe(8);
    expect(back(alone, 15)).toBe(10);
    const round = courseOf(
      fileWith([task("work", [step("over", "ev1", null, { to: "fin" })])], {
        ...MORE,
        crew: [{ id: "ev1", call: "EV1", station: "outside", start: "head" }],
        places: [...(MORE.places ?? []), { id: "shelter", refuge: true }],
        routes: [
          { between: ["head", "fin"], length: 10, time: "PT20M" },
          { between: ["shelter", "fin"], length: 10, time: "PT1M" },
          { between: ["lock", "head"], length: 10, time: "PT5M" },
        ],
      }),
    );
    expect([2, 8, 9, 19].map((pet) => back(round, pet))).toEqual([7, 13, 12, 2]);
  });

  it("[PLN6] lasts until everybody outside is at a refuge, whatever the closeout leaves out", () => {
    const outside = courseOf(
      fileWith([WORK, task("home", [step("stow", "ev1", 3, { at: "mast" })], { closeout: true })], MORE),
    );
    expect(back(outside, 30)).toBe(6 + 3 + 4);
  });

  it("[PLN6] cannot be told without a way home, without a refuge and closeout, or once no window fits", () => {
    const { routes: _, ...noRoutes } = MORE;
    expect(back(courseOf(fileWith([step("look", "ev1", 3, { at: "fin" })], noRoutes)), 3)).toBeNull();
    const noRefuge = { ...MORE, places: (MORE.places ?? []).map(({ id }) => ({ id })) };
    expect(back(courseOf(fileWith([WORK], noRefuge)), 9)).toBeNull();
    const call = (spans: { from: string; to: string }[]) =>
      courseOf(
        fileWith(
          [
            WORK,
            task("home", [step("call", "ev1", 2, { at: "lock", within: ["open"] })], { closeout: true }),
          ],
          {
            ...MORE,
            windows: [{ id: "open", kind: "listed", spans }],
          },
        ),
      );
    const two = call([
      { from: "PT20M", to: "PT22M" },
      { from: "PT60M", to: "PT62M" },
    ]);
    expect(back(two, 4)).toBe(18);
    expect(back(two, 20)).toBe(42);
    expect(back(two, 61)).toBeNull();
  });

  it("[PLN6] never says later than a window of the closeout lets everybody be in by the limit", () => {
    const gated = courseOf(
      fileWith(
        [WORK, task("home", [step("call", "ev1", 2, { at: "lock", within: ["open"] })], { closeout: true })],
        { ...MORE, windows: [{ id: "open", kind: "listed", spans: [{ from: "PT50M", to: "PT60M" }] }] },
      ),
    );
    const plan = returnPlanAt(gated, minutes(4));
    // The window is waited for until 50, so that the return takes 48; but after 54 (the way is 4) it is too late.
    expect(plan && inMinutes(plan.total)).toBe(48);
    const latest = plan && latestTurnBack(gated, plan, minutes(120));
    expect(latest).toBeLessThanOrEqual(minutes(54));
    expect(latest).toBeGreaterThan(minutes(54) - 1001);
  });

  it("[PLN6] a supply has to last until its own crew member is in with the last step done", () => {
    const split = courseOf(
      fileWith(
        [
          WORK,
          task(
            "home",
            [step("in-1", "ev1", null, { to: "lock" }), step("rest", "iv", 30, { after: ["in-1"] })],
            {
              closeout: true,
            },
          ),
        ],
        MORE,
      ),
    );
    const plan = returnPlanAt(split, minutes(30));
    if (!plan) throw new Error("no return");
    expect(inMinutes(plan.total)).toBe(40);
    expect(inMinutes(latestTurnBack(split, plan, minutes(100), "ev1" as CrewId))).toBe(90);
    expect(inMinutes(latestTurnBack(split, plan, minutes(100), "ev2" as CrewId))).toBe(97);
  });

  const CREW = ["ev1", "ev2"] as const;
  const PLACES = ["p0", "p1", "p2", "p3"] as const;
  const somebody = fc.constantFrom<readonly string[]>(
    ["ev1"],
    ["ev2"],
    ["ev1", "ev2"],
    ["ev1", "iv"],
    ["iv"],
  );
  const drawnStep = fc.record({
    by: somebody,
    place: fc.constantFrom(...PLACES),
    kind: fc.constantFrom("to", "at", "none"),
    minutes: fc.integer({ min: 1, max: 9 }),
    isWritten: fc.boolean(),
    after: fc.option(fc.record({ back: fc.integer({ min: 1, max: 5 }), lag: fc.nat({ max: 3 }) })),
    isInWindow: fc.integer({ min: 0, max: 3 }).map((number) => number === 0),
  });
  const drawn = fc.record({
    work: fc.array(drawnStep, { minLength: 1, maxLength: 7 }),
    closeout: fc.array(drawnStep, { maxLength: 6 }),
    more: fc.array(drawnStep, { maxLength: 3 }),
    late: fc.array(drawnStep, { maxLength: 3 }),
    legs: fc.tuple(...[1, 2, 3, 4].map(() => fc.integer({ min: 1, max: 9 }))),
    pick: fc.nat(),
    share: fc.integer({ min: 0, max: 4 }),
    isGated: fc.boolean(),
  });

  test.prop([drawn], { numRuns: 150 })(
    "[PLN6] is as long as the plan of what is left, by brute force, and the turn-back is never later",
    ({ work, closeout, more, late, legs, pick, share, isGated }) => {
      const [a, b, c, d] = legs;
      const tasks = [
        { steps: work, isCloseout: false },
        { steps: closeout, isCloseout: true },
        { steps: more, isCloseout: false },
        { steps: late, isCloseout: true },
      ];
      const ids: string[] = [];
      const file = fileWith(
        tasks.map(({ steps, isCloseout }, number) =>
          task(
            `t${number}`,
            steps.map((one) => {
              const id = `s${ids.length}`;
              const before = one.after && ids.at(-one.after.back);
              ids.push(id);
              const isOutside = one.by.some((crew) => crew !== "iv");
              const kind = isOutside ? one.kind : "none";
              return step(id, one.by, kind !== "to" ? one.minutes : one.isWritten ? one.minutes + 20 : null, {
                ...(kind === "to" ? { to: one.place } : kind === "at" ? { at: one.place } : {}),
                ...(before ? { after: [{ step: before, lag: `PT${one.after?.lag}M` }] } : {}),
                ...(isGated && isCloseout && one.isInWindow ? { within: ["open"] } : {}),
              });
            }),
            { closeout: isCloseout },
          ),
        ),
        {
          ...MORE,
          crew: [
            { id: "ev1", call: "EV1", station: "outside", start: "p0" },
            { id: "ev2", call: "EV2", station: "outside", start: "p0" },
            { id: "iv", call: "IV", station: "inside" },
          ],
          places: PLACES.map((id) => ({ id, refuge: id === "p0" })),
          routes: [
            { between: ["p0", "p1"], length: 1, time: `PT${a}M` },
            { between: ["p1", "p2"], length: 1, time: `PT${b}M` },
            { between: ["p2", "p3"], length: 1, time: `PT${c}M` },
            { between: ["p3", "p0"], length: 1, time: `PT${d}M` },
          ],
          windows: [
            {
              id: "open",
              kind: "listed",
              spans: [10, 50, 90, 130].map((at) => ({ from: `PT${at}M`, to: `PT${at + 20}M` })),
            },
          ],
        },
      );
      const outline = outlineOf(procedureOf(file));
      const planned = planOf(outline);
      const course = planned.timeline?.course;
      if (!course) return;
      const all = [...course.steps.values()];
      const chosen = all[pick % all.length];
      // Whole minutes: at the end of a step, or some minutes before.
      const pet = Math.max(0, inMinutes(chosen?.finish ?? 0) - share);
      const seat = (id: string, crew: string) => {
        const entry = outline.step(id);
        return (
          planned.whereabouts.from[entry?.index ?? -1]?.[entry?.step.by.indexOf(crew as CrewId) ?? -1] ?? null
        );
      };
      const complete = new Map(
        all
          .filter(({ finish }) => inMinutes(finish) <= pet)
          .map((one) => [one.step as string, inMinutes(one.finish)]),
      );
      const spots = new Map<string, Spot>(
        CREW.map((crew) => {
          let spot: Spot = { at: "p0" };
          for (const { step: id, start, finish } of all) {
            const entry = outline.step(id);
            if (!entry?.step.by.includes(crew as CrewId) || inMinutes(start) > pet) continue;
            const here: string = entry.step.at ?? ("at" in spot ? spot.at : "p0");
            spot = { at: here };
            if (entry.step.to === undefined) continue;
            const gone = pet - inMinutes(start);
            const left = inMinutes(finish) - pet;
            if (left <= 0 || entry.step.to === here) spot = { at: entry.step.to };
            else spot = { from: here, to: entry.step.to, gone, left };
          }
          return [crew, spot];
        }),
      );
      const expected = finishBrokenOff(file, { pet, complete, spots }, seat);
      const plan = returnPlanAt(course, minutes(pet));
      expect(plan && inMinutes(plan.finish)).toBe(expected);
      if (!plan || expected === null) return;
      for (const limit of [expected - 1, expected, expected + 1, expected + 40]) {
        const latest = latestTurnBack(course, plan, minutes(limit));
        expect(inMinutes(latest) >= pet).toBe(expected <= limit);
        if (!isGated) expect(latest).toBe(minutes(limit) - plan.total);
        expect(latest).toBeLessThanOrEqual(minutes(limit) - plan.total);
        if (latest <= minutes(pet)) continue;
        const then = finishBrokenOff(file, { pet: Math.floor(inMinutes(latest)), complete, spots }, seat);
        expect(then).not.toBeNull();
        expect(then).toBeLessThanOrEqual(limit);
      }
    },
  );
});
