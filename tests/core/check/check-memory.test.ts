import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { CheckMemory, checkOutline } from "../../../src/core/check/index.ts";
import { planOf, ReturnMemory, returnPlanAt } from "../../../src/core/plan/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../../src/core/procedure/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { fileWith, outlineFrom, step, task } from "../procedure-builder.ts";

const real = (name: string) =>
  JSON.parse(readFileSync(`procedures/${name}.procedure.json`, "utf8")) as ProcedureFile;

// Decisions, get-aheads, states, a way home; a limit; windows of contact; moves in hands.
const FILES = ["osier-ranging-head", "osier-pool-rehearsal", "sorrel-ridge-traverse", "osier-bring-in"];

/** What an author may do to a step: words that are advised on, times, and what everything else rests on. */
const MORE: fc.Arbitrary<object> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 0, max: 400 }).map((minutes) => ({ time: `PT${minutes}M` })) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.nat({ max: 9 }), fc.nat({ max: 9 }))
      .map(([low, more]) => ({ time: { low: `PT${low}M`, likely: `PT${low + more}M`, high: "PT90M" } })),
  },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom("Turning it", "Loosen it and remove the bolt", "Report", "Mate it", "x")
      .map((text) => ({ do: text })),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      { at: undefined },
      { by: ["iv"] },
      { moves: undefined },
      { time: undefined },
      { notBefore: "PT3H" },
      { or: [{ by: ["ev1"], time: "PT9M" }] },
    ),
  },
);

const EDITS = fc.array(fc.record({ step: fc.nat({ max: 400 }), more: MORE, again: fc.boolean() }), {
  minLength: 2,
  maxLength: 4,
});

function edited(file: ProcedureFile, at: number, more: object): ProcedureFile {
  const count = file.tasks.flatMap(({ steps }) => steps).length;
  let index = -1;
  const tasks = file.tasks.map((one) => ({
    ...one,
    steps: one.steps.map((step) => {
      index += 1;
      return index === at % count ? { ...step, ...more } : step;
    }),
  }));
  return JSON.parse(JSON.stringify({ ...file, tasks })) as ProcedureFile;
}

const outlineOfFile = (file: ProcedureFile): Outline | null => {
  const { procedure } = parseProcedure(file);
  return procedure && outlineOf(procedure);
};

describe("a memory of the last check", () => {
  test.prop([fc.constantFrom(...FILES), EDITS, fc.constantFrom(null, 1_931_000_000_000 as Instant)], {
    numRuns: 8,
  })(
    "[CHK1] [WRT4] changes no finding, whatever is edited from one check to the next",
    (name, edits, start) => {
      const memory = new CheckMemory();
      let file = real(name);
      const check = (options: { readonly start?: Instant | null }) => {
        const outline = outlineOfFile(file);
        if (outline) expect(checkOutline(outline, options, memory)).toEqual(checkOutline(outline, options));
      };
      check({ start });
      for (const { step: at, more, again } of edits) {
        file = edited(file, at, more);
        check({ start });
        // The instant of PET 0 may be chosen meanwhile.
        if (again) check({ start: null });
      }
    },
  );

  it("[CHK2] [WRT4] tells anew when hands are too full, and whose move comes first by the plan", () => {
    const file = (minutes: number) =>
      fileWith(
        [
          task("one", [
            step("wait", "ev1", minutes),
            step("take", "ev1", 1, { moves: [{ item: "case", to: { crew: "ev1" } }] }),
            step("lift", "ev1", 1, { moves: [{ item: "bar", to: { crew: "ev1" } }] }),
            step("other", "ev2", 4, { moves: [{ item: "case", to: { place: "lock" } }] }),
          ]),
        ],
        {
          format: "tetherline.procedure/2",
          places: [{ id: "lock", refuge: true }],
          crew: [
            { id: "ev1", call: "EV1", station: "outside", start: "lock" },
            { id: "ev2", call: "EV2", station: "outside", start: "lock" },
          ],
          items: [
            { id: "case", start: { place: "lock" }, hands: 2 },
            { id: "bar", start: { place: "lock" }, hands: 1 },
          ],
        },
      );
    const memory = new CheckMemory();
    for (const minutes of [9, 10, 1, 2, 30]) {
      const outline = outlineOfFile(file(minutes));
      if (!outline) throw new Error("the test's procedure is not sound");
      const found = checkOutline(outline, {}, memory);
      expect(found.map(({ code }) => code)).toContain("custody/hands-full");
      expect(found).toEqual(checkOutline(outline));
    }
  });
});

describe("a memory of returns", () => {
  /** Both lanes out and back, with a state and a lag on the way home, which may be bound to the clock. */
  const OUT = (times: readonly number[], isTimed: boolean): Outline => {
    const [a = 1, b = 1, c = 1, d = 1, e = 1] = times;
    return outlineFrom(
      [
        task("work", [
          step("open", "ev1", a, { at: "lock", sets: { hatch: "open" } }),
          step("ev1-out", "ev1", null, { to: "mast" }),
          step("bolt", "ev1", b, { at: "mast" }),
          step("ev2-out", "ev2", null, { to: "fin" }),
          step("valve", "ev2", c, { at: "fin" }),
          step("valve-again", "ev2", d, { at: "fin" }),
        ]),
        task(
          "home",
          [
            step("cool", "ev2", e, { at: "fin", after: [{ step: "valve", lag: "PT7M" }] }),
            step("ev1-in", "ev1", null, { to: "lock" }),
            step("ev2-in", "ev2", null, { to: "lock" }),
            step("shut", "ev2", 2, {
              at: "lock",
              after: ["ev1-in"],
              needs: { hatch: "open" },
              sets: { hatch: "closed" },
              ...(isTimed && { notBefore: "PT20M" }),
            }),
          ],
          { closeout: true },
        ),
      ],
      {
        format: "tetherline.procedure/2",
        crew: [
          { id: "ev1", call: "EV1", station: "outside", start: "lock" },
          { id: "ev2", call: "EV2", station: "outside", start: "lock" },
        ],
        places: [{ id: "lock", refuge: true }, { id: "mast" }, { id: "fin" }],
        routes: [
          { between: ["lock", "mast"], length: 10, time: "PT4M" },
          { between: ["lock", "fin"], length: 10, time: "PT3M" },
        ],
        states: [{ id: "hatch", values: ["open", "closed"], start: "closed", end: "closed" }],
        limits: { elapsed: "PT2H" },
      },
    );
  };

  test.prop([
    fc.array(fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 5, maxLength: 5 }), {
      minLength: 1,
      maxLength: 6,
    }),
    fc.boolean(),
  ])(
    "[PLN6] [WRT4] gives the return of a plan as it is worked out, at every minute of it, whatever its steps take",
    (all, isTimed) => {
      const memory = new ReturnMemory();
      for (const times of all) {
        const course = planOf(OUT(times, isTimed)).timeline?.course;
        if (!course) throw new Error("the test's procedure has no plan");
        for (let pet = 0; pet <= course.finish; pet += 60_000)
          expect(memory.at(course, pet as Duration)).toEqual(returnPlanAt(course, pet as Duration));
      }
    },
  );
});
