import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { Finding, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

const OUTSIDE: Partial<ProcedureFile> = {
  crew: [{ id: "ev1", call: "EV1", station: "outside", start: "hatch" }],
  places: [
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
  ],
  routes: [{ between: ["hatch", "boom"], length: 5, time: "PT1M" }],
};
const GET_AHEAD = { priority: "get-ahead" as const };

const errorsIn = (tasks: ProcedureFile["tasks"], more: Partial<ProcedureFile> = {}): Finding[] =>
  checkProcedureText(JSON.stringify(fileWith(tasks, { ...OUTSIDE, ...more }), null, 1)).findings.filter(
    ({ level }) => level === "error",
  );

describe("get-aheads", () => {
  const items = [{ id: "cover", label: "Cover", start: { place: "hatch" }, end: { place: "hatch" } }];
  const take = task(
    "take",
    [step("pick-up", "ev1", 1, { moves: [{ item: "cover", to: { crew: "ev1" } }] })],
    GET_AHEAD,
  );
  const back = task(
    "back",
    [step("put-back", "ev1", 1, { moves: [{ item: "cover", to: { place: "hatch" } }] })],
    GET_AHEAD,
  );
  const base = task("base", [step("a", "ev1", 1)]);

  it("[PRO16] one that another one needs is said so, with what comes of it under it", () => {
    const found = errorsIn([base, take, back], { items });
    expect(found.map(({ code, pointer, follows }) => [code, pointer, follows?.pointer])).toEqual([
      ["task/needs-get-ahead", "/tasks/1", undefined],
      ["custody/not-at-its-end", "/tasks/1/steps/0/moves/0", "/tasks/1"],
    ]);
    expect(said(found[0])).toBe(
      'The get-ahead "Task take" cannot be done without the get-ahead "Task back". Make them one task, or let "Task take" bring what it needs itself.',
    );
    expect(said(found[1])).toContain('(When of the get-ahead tasks only "Task take" is done.)');
  });

  it("[PRO16] those that can be done in any set bring nothing", () => {
    const extra = (id: string) => task(id, [step(`${id}-1`, "ev1", 1)], GET_AHEAD);
    expect(errorsIn([base, extra("one"), extra("two"), extra("three")])).toEqual([]);
  });

  it("[PRO16] one that leaves somebody where the next step is not is found, although it is done only if time allows", () => {
    const strands = task("stray", [step("go", "ev1", null, { to: "boom" })], GET_AHEAD);
    const found = errorsIn([base, strands, task("home", [step("count", "ev1", 1, { at: "hatch" })])]);
    expect(found.map(({ code, pointer }) => [code, pointer])).toEqual([
      ["place/not-there", "/tasks/2/steps/0/at"],
    ]);
    expect(said(found[0])).toContain("(When get-ahead tasks are done.)");
  });
});

describe("calls to the ground", () => {
  const crew: ProcedureFile["crew"] = [
    { id: "iv", call: "IV", station: "inside" },
    { id: "ground", call: "Ground", station: "ground" },
  ];
  const windows: ProcedureFile["windows"] = [
    { id: "pass", label: "Pass", kind: "listed", spans: [{ from: "PT0S", to: "PT10M" }] },
  ];
  const findingsOf = (steps: ProcedureFile["tasks"][number]["steps"]) =>
    checkProcedureText(JSON.stringify(fileWith(steps, { crew, windows }), null, 1))
      .findings.filter(({ code }) => code === "window/call-out-of-contact")
      .map(({ level, steps: [first] }) => `${level} ${first}`);

  it("[CHK5] out of every window of contact are a caution, unless they wait for one or only the ground does them", () => {
    const first = step("first", ["iv", "ground"], 5, { within: ["pass"] });
    const late = step("late", ["iv", "ground"], 6);
    expect(findingsOf([first, late])).toEqual(["caution late"]);
    expect(findingsOf([first, step("alone", "ground", 20)])).toEqual([]);
    expect(findingsOf([first, step("soon", ["iv", "ground"], 5)])).toEqual([]);
    expect(findingsOf([late])).toEqual([]);
  });
});
