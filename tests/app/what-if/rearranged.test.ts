import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Trial } from "../../../src/app/what-if/trial.ts";
import { changesOf, findingsOf, isEmpty, NO_TRIAL, tried } from "../../../src/app/what-if/trial.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { checkOutline } from "../../../src/core/check/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../../src/core/procedure/index.ts";
import type { CrewId, Duration, TaskId, WindowId } from "../../../src/core/units/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const MINUTE = 60_000;
const FILE: ProcedureFile = fileWith(
  [
    task("one", [step("a", "ev1", 10), step("b", ["ev1", "ev2"], 4)]),
    task("two", [
      step("c", "ev1", 6, {
        within: ["contact"],
        confirm: { by: "ev2", text: "It is shut" },
        moves: [{ item: "bolt", to: { crew: "ev1" } }],
        sets: { restraint: "ev1" },
        or: [{ by: ["ev2"], time: "PT7M" }],
      }),
      step("d", "iv", 0, { needs: { restraint: "ev1" }, after: ["c"] }),
    ]),
    task("three", [step("e", "ev2", 5)]),
  ],
  {
    format: "tetherline.procedure/2",
    items: [{ id: "bolt", start: { crew: "ev2" } }],
    states: [{ id: "restraint", values: "crew", start: "free" }],
    windows: [
      { id: "contact", kind: "listed", spans: [{ from: "PT5M", to: "PT30M" }] },
      {
        id: "pass",
        kind: "listed",
        spans: [{ from: "2031-04-02T09:00:00Z", to: "2031-04-02T09:10:00Z" }],
      },
      { id: "day", kind: "daylight" },
    ],
  },
);
const outline = outlineOf(procedureOf(FILE));
const trialOf = (part: {
  moved?: Record<string, string | null>;
  shifted?: Record<string, number>;
  swapped?: Record<string, [string, string]>;
}): Trial => ({
  ...NO_TRIAL,
  moved: new Map(Object.entries(part.moved ?? {}) as [TaskId, TaskId | null][]),
  shifted: new Map(
    Object.entries(part.shifted ?? {}).map(([id, by]) => [id as WindowId, (by * MINUTE) as Duration]),
  ),
  swapped: new Map(Object.entries(part.swapped ?? {}) as [TaskId, [CrewId, CrewId]][]),
});
const fileOf = (trial: Trial) => applyChanges(FILE, changesOf(trial, outline)).file;
const tasksOf = (trial: Trial) => fileOf(trial)?.tasks.map(({ id }) => id);
const stepOf = (trial: Trial, id: string) =>
  fileOf(trial)
    ?.tasks.flatMap(({ steps }) => steps)
    .find((one) => one.id === id);

describe("a trial that rearranges", () => {
  it("[CHG1] moves a task behind another, or first, also behind one that is left out", () => {
    expect(isEmpty(trialOf({ moved: { one: "two" } }))).toBe(false);
    expect(tasksOf(trialOf({ moved: { one: "two" } }))).toEqual(["two", "one", "three"]);
    expect(tasksOf(trialOf({ moved: { three: null } }))).toEqual(["three", "one", "two"]);
    expect(tasksOf(trialOf({ moved: { one: "one" } }))).toEqual(["one", "two", "three"]);
    const dropped: Trial = { ...trialOf({ moved: { one: "two" } }), dropped: new Set(["two" as TaskId]) };
    expect(tasksOf(dropped)).toEqual(["one", "three"]);
  });

  it("[CHG1] shifts the spans of a window; what would come before PET 0 is cut off", () => {
    const spansOf = (by: number, id = "contact") =>
      fileOf(trialOf({ shifted: { [id]: by } }))?.windows?.find((one) => one.id === id)?.spans;
    expect(spansOf(10)).toEqual([{ from: "PT15M", to: "PT40M" }]);
    expect(spansOf(-10)).toEqual([{ from: "PT0S", to: "PT20M" }]);
    expect(spansOf(-30)).toEqual([]);
    expect(spansOf(-15, "pass")).toEqual([
      { from: "2031-04-02T08:45:00.000Z", to: "2031-04-02T08:55:00.000Z" },
    ]);
    // Day and night come with the start, so that there is nothing to shift.
    expect(changesOf(trialOf({ shifted: { day: 10 } }), outline)).toEqual([]);
  });

  it("[CHG1] swaps two people in a task: who does it, confirms, could do it, gets an item, is in a restraint", () => {
    const trial = trialOf({ swapped: { two: ["ev1", "ev2"] } });
    expect(stepOf(trial, "c")).toMatchObject({
      by: ["ev2"],
      confirm: { by: "ev1", text: "It is shut" },
      moves: [{ item: "bolt", to: { crew: "ev2" } }],
      sets: { restraint: "ev2" },
    });
    expect(stepOf(trial, "c")?.or).toMatchObject([{ by: ["ev1"] }]);
    expect(stepOf(trial, "d")).toMatchObject({ by: ["iv"], needs: { restraint: "ev2" } });
    expect(stepOf(trial, "a")).toEqual(FILE.tasks[0]?.steps[0]);
  });

  it("[CHK2] shows what a swap breaks", () => {
    const held: ProcedureFile = fileWith(
      [task("one", [step("hand", "ev1", 5, { moves: [{ item: "bolt", to: { place: "mast" } }] })])],
      {
        crew: [
          { id: "ev1", call: "EV1", station: "outside", start: "mast" },
          { id: "ev2", call: "EV2", station: "outside", start: "lock" },
        ],
        places: [
          { id: "mast", refuge: true },
          { id: "lock", refuge: true },
        ],
        items: [{ id: "bolt", start: { crew: "ev1" }, end: { place: "mast" } }],
      },
    );
    const before = outlineOf(procedureOf(held));
    const result = tried(held, before, trialOf({ swapped: { one: ["ev1", "ev2"] } }), {});
    if (!result.outline) throw new Error("the swap cannot be read");
    const codes = findingsOf(checkOutline(before), result.outline).new.map(({ code }) => code);
    expect(codes.some((code) => code.startsWith("item/") || code.startsWith("custody/"))).toBe(true);
  });

  test.prop([
    fc.constantFrom("one", "two", "three"),
    fc.constantFrom("ev1", "ev2", "iv"),
    fc.constantFrom("ev1", "ev2", "iv"),
  ])("[CHG1] a swap done twice is the file again, but for how it is written", (id, one, other) => {
    const pair = trialOf({ swapped: { [id]: [one, other] } });
    const once = fileOf(pair);
    if (!once) throw new Error("not swapped");
    const swapped = outlineOf(procedureOf(once));
    const twice = applyChanges(once, changesOf(pair, swapped)).file;
    expect(parseProcedure(twice).procedure).toEqual(parseProcedure(FILE).procedure);
  });
});
