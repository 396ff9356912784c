import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { Finding, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

const check = (...file: Parameters<typeof fileWith>): readonly Finding[] =>
  checkProcedureText(JSON.stringify(fileWith(...file), null, 1)).findings;
const brief = ({ level, code, pointer }: Finding) => `${level} ${code} ${pointer}`;
const ofCode = (code: RegExp, found: readonly Finding[]) => found.filter((one) => code.test(one.code));
const record = (unit: string): Parameters<typeof fileWith>[0] => [
  step("read", "ev1", 1, { records: [{ id: "value", label: "Value", unit }] }),
];

describe("units", () => {
  it.each([
    ["Kpa", "kPa"],
    ["KPA", "kPa"],
    ["psi", "[psi]"],
    ["°C", "Cel"],
    ["Nm", "N.m"],
    ["Ah", "A.h"],
    ["mmHg", "mm[Hg]"],
    ["l/Min", "l/min"],
    ["rpm", "/min"],
    ["feet", "[ft_i]"],
  ])("[PRO19] %s is no UCUM code; the nearest is %s, and the mend writes it", (unit, meant) => {
    const [found] = ofCode(/^unit/, check(record(unit)));
    expect(found && brief(found)).toBe("error unit/not-valid /tasks/0/steps/0/records/0/unit");
    expect(said(found)).toContain(`The nearest code is "${meant}".`);
    expect(found?.mend).toMatchObject([{ change: "read", set: { records: [{ id: "value", unit: meant }] } }]);
    expect(found?.mendSays?.key).toBe("unit/mend");
  });

  it("[PRO19] one that is near to none has no mend", () => {
    const [found] = ofCode(/^unit/, check(record("foo")));
    expect(found?.mend).toBeNull();
    expect(said(found)).toBe(
      '"foo" is not a UCUM code, so that nobody can tell what the figure means. Write the code of the unit, such as kPa, N.m or /min.',
    );
  });

  it.each([
    "1",
    "kPa",
    "N.m",
    "/min",
    "m/s2",
    "kg.m2.s-3",
    "Cel",
    "{turns}",
    "mOhm",
    "(m/s)/h",
    "B[10.nV]",
    "10*3",
  ])("[PRO19] %s is one", (unit) => {
    expect(ofCode(/^unit/, check(record(unit)))).toEqual([]);
  });

  it.each(["m//s", ".m", "m.", "(m", "m)", "{m", "m2kg", "kmin", "m/[", "+2", "m^2"])(
    "[PRO19] %s is none",
    (unit) => {
      expect(ofCode(/^unit/, check(record(unit))).length).toBe(1);
    },
  );

  it("[PRO19] those of supplies count as well", () => {
    const supplies: ProcedureFile["supplies"] = [
      { crew: "ev1", id: "oxygen", unit: "Kpa", full: 6200, redline: 620, perHour: 70 },
    ];
    const [found] = ofCode(/^unit/, check([step("a", "ev1", 1)], { supplies }));
    expect(found && brief(found)).toBe("error unit/not-valid /supplies/0/unit");
    expect(found?.mend).toEqual([{ change: "ev1 oxygen", list: "supplies", set: { unit: "kPa" } }]);
  });
});

describe("sizes", () => {
  const others = [step("a", "ev1", 2), step("b", "ev1", 3), step("c", "ev1", 4)];
  const oddIn = (time: string | object, more: object = {}) =>
    ofCode(/^time/, check([...others, step("odd", "ev1", null, { time: time as string, ...more })])).map(
      brief,
    );

  it.each([
    ["PT5S", ["advice time/far-off /tasks/0/steps/3/time"]],
    ["PT12H", ["advice time/long /tasks/0/steps/3/time"]],
    ["PT4H", []],
    ["PT4H1S", ["advice time/long /tasks/0/steps/3/time"]],
    ["PT30S", []],
  ])("[PRO19] a step of %s among steps of minutes", (time, expected) => {
    expect(oddIn(time)).toEqual(expected);
  });

  it("[PRO19] no time at all is a milestone only where nothing is done", () => {
    expect(oddIn("PT0S")).toEqual([]);
    const records = [{ id: "turns", unit: "1" }];
    expect(oddIn("PT0S", { records })).toEqual(["advice time/zero /tasks/0/steps/3/time"]);
    expect(oddIn("PT0S", { confirm: { by: "ev2", text: "Held" } })).toHaveLength(1);
  });

  it("[PRO19] low and high a hundred times apart, and a call, which takes seconds", () => {
    expect(oddIn({ low: "PT2S", likely: "PT3M", high: "PT5M" })).toHaveLength(1);
    expect(oddIn("PT5S", { do: "Call “go”" })).toEqual([]);
  });

  it("[PRO19] a limit a hundred times off every other one of its unit, where there are two others at least", () => {
    const reading = (id: string, min: number, max: number) =>
      step(id, "ev1", 1, { records: [{ id: `${id}-r`, label: "Pressure", unit: "kPa", min, max }] });
    const found = ofCode(/^size/, check([reading("one", 28, 31), reading("two", 28, 3100)]));
    expect(found.map(brief)).toEqual(["advice size/far-off /tasks/0/steps/1/records/0/max"]);
    expect(said(found[0])).toContain("3100 kPa");
    expect(ofCode(/^size/, check([reading("one", 28, 31), reading("two", 280, 310)]))).toEqual([]);
    expect(ofCode(/^size/, check([reading("one", 0.1, 310)]))).toEqual([]);
  });
});

describe("confirmations", () => {
  it("[CHK3] a hand-over and a mate that nobody confirms draw advice", () => {
    const items: ProcedureFile["items"] = [{ id: "lamp", start: { crew: "ev1" } }];
    const give = { do: "Hand the lamp to EV2", moves: [{ item: "lamp", to: { crew: "ev2" } }] };
    const confirm = { by: "ev2", text: "Held" };
    const adviceIn = (more: object) =>
      ofCode(/^text/, check([step("give", ["ev1", "ev2"], 1, { ...give, ...more })], { items })).map(brief);
    expect(adviceIn({})).toEqual(["advice text/not-confirmed /tasks/0/steps/0"]);
    expect(adviceIn({ confirm })).toEqual([]);
    const mate = (more: object) =>
      ofCode(/^text/, check([step("mate", "ev1", 1, { do: "Mate the plug", ...more })]));
    expect(mate({}).map(brief)).toEqual(["advice text/not-confirmed /tasks/0/steps/0"]);
    expect(mate({ confirm })).toEqual([]);
  });
});
