import { test } from "@fast-check/vitest";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changesBetween } from "../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../src/core/procedure/index.ts";
import { CHANGE_LISTS, parseProcedure } from "../../src/core/procedure/index.ts";
import { procedureFiles } from "./procedure-files.ts";

describe("the procedures that properties are tried on", () => {
  test.prop([procedureFiles], { numRuns: 300 })("[PRO10] parse, each of them", (file) => {
    expect(parseProcedure(file).findings.filter(({ level }) => level === "error")).toEqual([]);
  });

  it("[CHG1] have members in every list, and no list that is never left out or empty but those that may not be", () => {
    const files = fc.sample(procedureFiles, { numRuns: 300, seed: 1 });
    const has = (test: (file: Record<string, unknown>) => boolean) =>
      files.some((file) => test(file as never));
    for (const list of CHANGE_LISTS) {
      if (list === "steps" || list === "pictures") continue;
      const length = (file: Record<string, unknown>) => {
        const members = file[list];
        return members === undefined ? undefined : Object.keys(members as object).length;
      };
      expect([list, has((file) => (length(file) ?? 0) > 1)]).toEqual([list, true]);
      if (list === "crew" || list === "tasks") continue;
      expect([list, has((file) => length(file) === 0), has((file) => length(file) === undefined)]).toEqual([
        list,
        true,
        true,
      ]);
    }
    expect(
      has((file) => (file as ProcedureFile).contingencies?.some(({ tasks }) => tasks.length > 0) ?? false),
    ).toBe(true);
  });

  it("[CHG3] differ by changes of every form that a difference has, in every list", () => {
    const pairs = fc.sample(fc.tuple(procedureFiles, procedureFiles), { numRuns: 300, seed: 1 });
    const seen = new Set(
      pairs.flatMap(([before, after]) =>
        changesBetween(before, after).map(
          (change: Change) => `${Object.keys(change)[0]} ${"list" in change ? change.list : "steps"}`,
        ),
      ),
    );
    const lists = CHANGE_LISTS.filter((list) => list !== "pictures");
    const expected = ["add", "drop", "move", "change"].flatMap((form) =>
      lists.map((list) => `${form} ${list}`),
    );
    // Words have no order.
    expect(expected.filter((one) => !seen.has(one))).toEqual(["move words"]);
  });
});
