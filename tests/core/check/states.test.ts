import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { checkOutline, checkProcedureText } from "../../../src/core/check/index.ts";
import type { Finding, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT, outlineOf } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

const POWER = { id: "power", label: "Power", values: ["on", "off"], start: "on" };
const HATCH = { id: "hatch", label: "Hatch", values: ["closed", "open"], start: "closed", end: "closed" };

const stateFindingsOf = (steps: FileStep[], more: Partial<ProcedureFile> = {}) =>
  checkProcedureText(
    JSON.stringify(fileWith(steps, { format: FORMAT, states: [POWER], ...more }), null, 1),
  ).findings.filter(({ code }) => code.startsWith("state/"));
const brief = ({ code, pointer, steps }: Finding) => [code, pointer, ...steps];

describe("states", () => {
  it("[PRO13] a step that nothing puts behind the one that sets its state is found, with both ways to mend it", () => {
    const steps = [
      step("power-off", "iv", 1, { sets: { power: "off" } }),
      step("unplug", "ev1", 1, { needs: { power: "off" } }),
    ];
    const found = stateFindingsOf(steps);
    expect(found.map(brief)).toEqual([
      ["state/not-set", "/tasks/0/steps/1/needs/power", "power-off", "unplug"],
    ]);
    expect(said(found[0])).toBe(
      '"unplug" needs Power to be off: "power-off" sets Power to off, but nothing says that it comes first; until then it is on. Let "unplug" come after "power-off", or set it in a step before.',
    );
    expect(found[0]?.level).toBe("error");
    expect(found[0]?.position?.line).toBeGreaterThan(1);
    expect(
      stateFindingsOf([steps[0] as FileStep, { ...(steps[1] as FileStep), after: ["power-off"] }]),
    ).toEqual([]);
  });

  it("[PRO13] a step that may come between, one that unsets it, one that comes too late, and none at all", () => {
    const off = step("off", "ev1", 1, { sets: { power: "off" } });
    const work = step("work", "ev1", 1, { needs: { power: "off" } });
    const on = (by: string) => step("on", by, 1, { after: ["off"], sets: { power: "on" } });
    expect(stateFindingsOf([off, work, on("iv")]).map(brief)).toEqual([
      ["state/between", "/tasks/0/steps/1/needs/power", "work", "on"],
    ]);
    expect(stateFindingsOf([off, on("ev1"), work]).map(brief)).toEqual([
      ["state/unset", "/tasks/0/steps/2/needs/power", "on", "work"],
    ]);
    expect(stateFindingsOf([work, off]).map((one) => [...brief(one), said(one)?.includes("Put")])).toEqual([
      ["state/not-set", "/tasks/0/steps/0/needs/power", "work", "off", true],
    ]);
    expect(stateFindingsOf([work]).map((one) => [...brief(one), said(one)?.includes("Add")])).toEqual([
      ["state/not-set", "/tasks/0/steps/0/needs/power", "work", true],
    ]);
  });

  it("[PRO13] two steps that set it differently with nothing between them are a race; to the same value they are not", () => {
    const one = step("one", "ev1", 1, { sets: { power: "off" } });
    const race = stateFindingsOf([one, step("two", "ev2", 1, { sets: { power: "on" } })]);
    expect(race.map(brief)).toEqual([["state/race", "/tasks/0/steps/1/sets/power", "one", "two"]]);
    expect(stateFindingsOf([one, step("two", "ev2", 1, { sets: { power: "off" } })])).toEqual([]);
  });

  it("[PRO13] at the end it is as it must be: found at the step that leaves it otherwise, or where it stands", () => {
    const open = step("open", "ev1", 1, { sets: { hatch: "open" } });
    expect(stateFindingsOf([open], { states: [HATCH] }).map(brief)).toEqual([
      ["state/not-at-its-end", "/tasks/0/steps/0/sets/hatch", "open"],
    ]);
    expect(
      stateFindingsOf([step("a", "ev1", 1)], { states: [{ ...HATCH, start: "open" }] }).map(brief),
    ).toEqual([["state/not-at-its-end", "/states/0/end"]]);
  });

  it("[PRO13] a state of crew members is free or somebody’s, and a sentence names that one by the call sign", () => {
    const found = stateFindingsOf(
      [
        step("get-in", "ev1", 1, { needs: { rest: "free" }, sets: { rest: "ev1" } }),
        step("also-in", "ev2", 1, { after: ["get-in"], needs: { rest: "free" }, sets: { rest: "ev2" } }),
      ],
      { states: [{ id: "rest", label: "Foot restraint", values: "crew", start: "free" }] },
    );
    expect(found.map(brief)).toEqual([["state/unset", "/tasks/0/steps/1/needs/rest", "get-in", "also-in"]]);
    expect(said(found[0])).toContain('"get-in" sets Foot restraint to EV1');
  });

  it("[ORD3] [PRO13] over 1,000 of them are not listed, and a caution says so", () => {
    const alternating = (by: string) =>
      Array.from({ length: 60 }, (_, index) =>
        step(`${by}-${index}`, by, 1, { sets: { power: index % 2 === 0 ? "on" : "off" } }),
      );
    const { findings } = checkProcedureText(
      JSON.stringify(
        fileWith([...alternating("ev1"), ...alternating("ev2")], { format: FORMAT, states: [POWER] }),
      ),
    );
    expect(findings.filter(({ code }) => code === "state/race").length).toBe(1000);
    expect(findings.filter(({ code }) => code === "order/more-races").length).toBe(1);
  });

  it("[PRO13] [ORD4] is looked at in every scenario", () => {
    const found = stateFindingsOf([
      step("ask", "ev1", 1, { decide: { id: "x", ask: "?", outcomes: ["y", "n"], expect: "y" } }),
      step("off", "ev1", 1, { when: { x: "y" }, sets: { power: "off" } }),
      step("work", "ev1", 1, { needs: { power: "off" } }),
    ]);
    expect(found.map((one) => [...brief(one), said(one)?.includes('(When "x" comes out "n".)')])).toEqual([
      ["state/not-set", "/tasks/0/steps/2/needs/power", "work", true],
    ]);
  });
});

/** What a small procedure does to two states, in every order in which its steps can be done one after the other. */
function byEnumeration(steps: readonly FileStep[], starts: Readonly<Record<string, string>>) {
  const needs = new Set<string>();
  const races = new Set<string>();
  const ends = new Set<string>();
  const seenFirst = new Set<string>();
  const mustBefore = (early: FileStep, late: FileStep) =>
    late.after?.includes(early.id) || early.by.some((crew) => late.by.includes(crew));
  const go = (order: readonly FileStep[], states: Readonly<Record<string, string>>) => {
    const rest = steps.filter((one) => !order.includes(one));
    if (rest.length === 0) {
      for (const [state, value] of Object.entries(states)) ends.add(`${state} ${value}`);
      for (const [at, one] of order.entries())
        for (const other of order.slice(at + 1)) seenFirst.add(`${one.id} ${other.id}`);
    }
    for (const next of rest) {
      const isReady = steps.every(
        (one, at) => order.includes(one) || at >= steps.indexOf(next) || !mustBefore(one, next),
      );
      if (!isReady) continue;
      for (const [state, value] of Object.entries(next.needs ?? {}))
        if (states[state] !== value) needs.add(`${next.id} ${state}`);
      go([...order, next], { ...states, ...next.sets });
    }
  };
  go([], starts);
  for (const [at, one] of steps.entries()) {
    for (const other of steps.slice(at + 1)) {
      const isEither = seenFirst.has(`${one.id} ${other.id}`) && seenFirst.has(`${other.id} ${one.id}`);
      for (const state of Object.keys(starts)) {
        const [value, otherValue] = [one.sets?.[state], other.sets?.[state]];
        if (isEither && value && otherValue && value !== otherValue)
          races.add(`${one.id} ${other.id} ${state}`);
      }
    }
  }
  return { needs, races, ends };
}

const values = fc.constantFrom({}, {}, { p: "x" }, { p: "y" }, { q: "x" }, { p: "y", q: "z" }, { q: "z" });
const smallSteps = fc
  .array(
    fc.record({
      by: fc.subarray(["ev1", "ev2", "iv"], { minLength: 1, maxLength: 2 }),
      needs: values,
      sets: values,
      links: fc.array(fc.nat(5), { maxLength: 2 }),
    }),
    { minLength: 2, maxLength: 6 },
  )
  .map((drawn) =>
    drawn.map(({ by, needs, sets, links }, index): FileStep => {
      const after = [...new Set(links.filter((link) => link < index))].map((link) => `s${link}`);
      return step(`s${index}`, by, 1, { needs, sets, after });
    }),
  );

describe("states over every order", () => {
  test.prop([smallSteps], { numRuns: 400 })(
    "[PRO13] [ORD2] the findings are exactly those that going through every order one by one finds",
    (steps) => {
      const ending = { p: "x", q: "z" };
      const states = Object.entries(ending).map(([id, end]) => ({
        id,
        values: ["x", "y", "z"],
        start: "x",
        end,
      }));
      const found = checkOutline(outlineOf(procedureOf(fileWith(steps, { format: FORMAT, states }))));
      const of = (...codes: string[]) => found.filter(({ code }) => codes.includes(code));
      const { needs, races, ends } = byEnumeration(steps, { p: "x", q: "x" });
      const stepAt = (pointer: string) => steps[Number(pointer.split("/")[4])]?.id;
      const needed = of("state/not-set", "state/unset", "state/between").map(
        ({ pointer, things }) => `${stepAt(pointer)} ${things[0]}`,
      );
      expect(new Set(needed)).toEqual(needs);
      expect(new Set(of("state/race").map((one) => [...one.steps, ...one.things].join(" ")))).toEqual(races);
      const astray = [...ends].filter(
        (one) => !Object.entries(ending).some((pair) => pair.join(" ") === one),
      );
      const atEnd = new Set(of("state/not-at-its-end").flatMap(({ things }) => things));
      expect(atEnd).toEqual(new Set(astray.map((one) => one.split(" ")[0])));
    },
  );
});
