import { describe, expect, it } from "vitest";
import type { Outcomes } from "../../../src/core/procedure/index.ts";
import { activityOf, lanesOf, MOST_SCENARIOS, scenariosOf } from "../../../src/core/procedure/index.ts";
import type { DecisionId } from "../../../src/core/units/index.ts";
import { outlineFrom, step, task } from "../procedure-builder.ts";

const decide = (id: string, outcomes = ["yes", "no"]) => ({
  decide: { id, ask: "Well?", outcomes, expect: outcomes[0] as string },
});
const outcomes = (said: Record<string, string>): Outcomes =>
  new Map(Object.entries(said) as [DecisionId, string][]);
const asRecords = (all: readonly Outcomes[]) => all.map((one) => Object.fromEntries(one));

const branching = outlineFrom([
  task("first", [
    step("ask", "ev1", 1, decide("bolt", ["free", "stuck"])),
    step("free", "ev1", 1, { when: { bolt: "free" } }),
    step("stuck", ["ev1", "ev2"], 1, { when: { bolt: "stuck" }, ...decide("drill") }),
    step("drilled", "ev2", 1, { when: { bolt: "stuck", drill: "no" } }),
  ]),
  task("spare", [step("extra", "iv", 1)], { priority: "get-ahead" }),
  task("last", [step("end", ["ev2", "ev1"], 1)]),
]);

describe("an outline", () => {
  it("[PRO1] has its steps in reading order, numbered by task and step", () => {
    expect(branching.steps.map(({ number, step: { id }, pointer }) => [number, id, pointer])).toEqual([
      ["1.1", "ask", "/tasks/0/steps/0"],
      ["1.2", "free", "/tasks/0/steps/1"],
      ["1.3", "stuck", "/tasks/0/steps/2"],
      ["1.4", "drilled", "/tasks/0/steps/3"],
      ["2.1", "extra", "/tasks/1/steps/0"],
      ["3.1", "end", "/tasks/2/steps/0"],
    ]);
    expect(branching.step("end")?.performers).toEqual([1, 0]);
    expect(branching.step("none")).toBeNull();
    expect(branching.lane("none")).toBe(-1);
  });

  it("[PRO1] gives each crew member the steps that name it, in order", () => {
    const { active } = activityOf(branching, outcomes({ bolt: "stuck", drill: "no" }), true);
    expect(lanesOf(branching, active)).toEqual([[0, 2, 5], [2, 3, 5], [4]]);
  });

  it("[PRO4] [PRO5] leaves inactive steps out; a decision not taken counts as expected", () => {
    const active = (said: Record<string, string>, getAheads = false) => {
      const activity = activityOf(branching, outcomes(said), getAheads);
      return branching.steps.filter(({ index }) => activity.active[index]).map(({ step: { id } }) => id);
    };
    expect(active({})).toEqual(["ask", "free", "end"]);
    expect(active({ bolt: "stuck" })).toEqual(["ask", "stuck", "end"]);
    expect(active({ bolt: "stuck", drill: "no" })).toEqual(["ask", "stuck", "drilled", "end"]);
    // "drill" does not arise when the bolt is free, whatever is said of it.
    expect(active({ bolt: "free", drill: "no" })).toEqual(["ask", "free", "end"]);
  });

  it("[PRO9] leaves get-ahead tasks out unless asked for", () => {
    expect(activityOf(branching, outcomes({}), false).active[4]).toBe(false);
    expect(activityOf(branching, outcomes({}), true).active[4]).toBe(true);
  });
});

describe("the scenarios of a procedure", () => {
  it("[ORD4] are all combinations that can arise, the expected one first", () => {
    const { outcomes: all, complete } = scenariosOf(branching);
    expect(complete).toBe(true);
    expect(asRecords(all)).toEqual([{}, { bolt: "stuck" }, { bolt: "stuck", drill: "no" }]);
  });

  const independent = (count: number) =>
    outlineFrom(
      Array.from({ length: count }, (_, index) => step(`s${index}`, "ev1", 1, decide(`d${index}`))),
    );

  it("[ORD4] are exact up to 4,096 combinations", () => {
    const { outcomes: all, complete } = scenariosOf(independent(12));
    expect([complete, all.length]).toEqual([true, MOST_SCENARIOS]);
    expect(new Set(asRecords(all).map((one) => JSON.stringify(one))).size).toBe(MOST_SCENARIOS);
  });

  it("[ORD4] above that are all single and pairwise departures, and say so", () => {
    const { outcomes: all, complete } = scenariosOf(independent(13));
    expect(complete).toBe(false);
    expect(all.length).toBe(1 + 13 + (13 * 12) / 2);
    expect(all[0]?.size).toBe(0);
    expect(
      all.some((one) => one.get("d3" as DecisionId) === "no" && one.get("d9" as DecisionId) === "no"),
    ).toBe(true);
  });
});
