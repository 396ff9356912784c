import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT } from "../../../src/core/procedure/index.ts";
import { fileWith, step } from "../procedure-builder.ts";

const OUTSIDE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
    { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
  ],
  places: [
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
    { id: "tip", label: "Tip" },
  ],
  routes: [
    { between: ["hatch", "boom"], length: 5, time: "PT1M" },
    { between: ["boom", "tip"], length: 5, time: "PT1M" },
  ],
};

type FileSteps = Parameters<typeof fileWith>[0];
const check = (steps: FileSteps, more: Partial<ProcedureFile> = {}) =>
  checkProcedureText(JSON.stringify(fileWith(steps, { ...OUTSIDE, ...more }), null, 1)).findings;
const listed = (steps: FileSteps, more: Partial<ProcedureFile> = {}) =>
  check(steps, more).flatMap(({ level, code, steps: [first], follows }) =>
    level === "error" ? [`${follows ? "  " : ""}${code} ${first}`] : [],
  );

describe("what follows from a finding", () => {
  it("[CHK1] stands under it: the steps behind one that is at a wrong place, and what is moved there", () => {
    expect(
      listed(
        [
          step("wrong", "ev1", 1, { at: "tip" }),
          step("take", "ev1", 1, { moves: [{ item: "lamp", to: { crew: "ev1" } }] }),
          step("right", "ev1", 1, { at: "hatch" }),
          step("go", "ev1", null, { to: "boom" }),
          step("also-wrong", "ev1", 1, { at: "tip" }),
        ],
        { items: [{ id: "lamp", start: { place: "hatch" }, end: { crew: "ev1" } }] },
      ),
    ).toEqual([
      "place/not-there wrong",
      "  place/not-there right",
      "  custody/not-held take",
      "place/not-there also-wrong",
    ]);
  });

  it("[CHK1] stands under it: what else becomes of an item, and the needs that one missing link leaves open", () => {
    const lamp = (id: string, by: string) =>
      step(id, by, 1, { moves: [{ item: "lamp", to: { place: "hatch" } }] });
    const items = [{ id: "lamp", start: { place: "boom" } }];
    expect(listed([lamp("one", "ev1"), lamp("two", "ev1")], { items })).toEqual(["custody/not-held one"]);
    const needs = { needs: { power: "off" } };
    expect(
      listed(
        [
          step("off", "ev2", 1, { sets: { power: "off" } }),
          step("unplug", "ev1", 1, needs),
          step("pull", "ev1", 1, needs),
        ],
        { format: FORMAT, states: [{ id: "power", values: ["on", "off"], start: "on" }] },
      ),
    ).toEqual(["state/not-set off", "  state/not-set off"]);
  });

  it("[CHK1] names its cause by code and pointer, and another crew member’s mistake is no cause", () => {
    const found = check([
      step("one", "ev1", 1, { at: "tip" }),
      step("two", "ev2", 1, { at: "boom" }),
      step("three", "ev1", 1, { at: "hatch" }),
    ]).filter(({ level }) => level === "error");
    expect(found.map(({ steps: [first], follows }) => [first, follows])).toEqual([
      ["one", null],
      ["three", { code: "place/not-there", pointer: "/tasks/0/steps/0/at" }],
      ["two", null],
    ]);
  });
});

describe("a mend", () => {
  it("[CHK1] is tried before it is offered: one that would bring a new finding is not, and one that holds says what it does", () => {
    const needed = [
      step("work", "ev1", 1, { at: "boom" }),
      step("more", "ev1", 1, { at: "boom" }),
      step("home", "ev1", null, { to: "hatch" }),
    ];
    const [offered] = check(needed);
    expect([offered?.code, offered?.mend?.length, offered?.mendSays?.key]).toEqual([
      "place/not-there",
      1,
      "place/mend-translation",
    ]);
    // With a hatch that stays closed, the translation would lead through it.
    const routes = OUTSIDE.routes?.map((route) => ({ ...route, needs: { hatch: "open" } })) ?? [];
    const closed: Partial<ProcedureFile> = {
      format: FORMAT,
      routes,
      states: [{ id: "hatch", values: ["closed", "open"], start: "closed" }],
    };
    const found = check(needed.slice(0, 2), closed);
    expect(found.map(({ code, mend, mendSays }) => [code, mend, mendSays])).toEqual([
      ["place/not-there", null, null],
    ]);
  });
});
