import { isDeepStrictEqual } from "node:util";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  applyChanges,
  changesBetween,
  inverseOf,
  NeverAppliedError,
  rollOf,
} from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { CHANGE_LISTS, parseProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { anyChange, frozen, procedureFiles, withKeysTurned } from "../procedure-files.ts";

/** What can be applied of changes, one after the other. */
function applicable(file: ProcedureFile, changes: readonly Change[]): Change[] {
  const taken: Change[] = [];
  for (const change of changes) if (!applyChanges(file, [...taken, change]).problem) taken.push(change);
  return taken;
}
const changed = (file: ProcedureFile, changes: readonly Change[]) => applied(file, applicable(file, changes));

function applied(file: ProcedureFile, changes: readonly Change[]): ProcedureFile {
  const result = applyChanges(file, changes);
  if (result.problem) throw new Error(`${JSON.stringify(changes)}: ${JSON.stringify(result.problem)}`);
  return result.file;
}

describe("the changes between two procedures", () => {
  test.prop([procedureFiles], { numRuns: 300 })("are between procedures that parse", (file) => {
    expect(parseProcedure(file).findings.filter(({ level }) => level === "error")).toEqual([]);
  });

  test.prop([procedureFiles, procedureFiles], { numRuns: 300 })(
    "[CHG3] make the second of the first, whatever the two are, order included",
    (before, after) => {
      expect(applied(frozen(before), changesBetween(before, frozen(after)))).toEqual(after);
    },
  );

  test.prop([procedureFiles, procedureFiles], { numRuns: 300 })(
    "[CHG3] are none only when the two are equal, the order of keys aside",
    (before, after) => {
      expect(changesBetween(before, structuredClone(before))).toEqual([]);
      expect(changesBetween(before, withKeysTurned(before))).toEqual([]);
      expect(changesBetween(before, after).length === 0).toBe(isDeepStrictEqual(before, after));
    },
  );

  test.prop([procedureFiles, fc.array(anyChange, { maxLength: 6 })], { numRuns: 200 })(
    "[CHG3] make what any changes made, even where that is no procedure, and no more of them than is due",
    (before, wanted) => {
      const after = changed(before, wanted);
      const found = changesBetween(before, after);
      expect(applied(before, found)).toEqual(after);
      expect(changesBetween(after, before).length === 0).toBe(found.length === 0);
    },
  );

  const LONG = fileWith([
    task(
      "one",
      ["a", "b", "c", "d"].map((id) => step(id, "ev1", 3)),
    ),
    task(
      "two",
      ["e", "f"].map((id) => step(id, "ev2", 3)),
    ),
  ]);

  it.each<readonly [string, Change[]]>([
    ["a changed duration is one change of `time`", [{ change: "b", set: { time: "PT5M" } }]],
    ["a step that goes to another task is one move", [{ move: "b", behind: "e" }]],
    ["a step first in another task is one move", [{ move: "b", first: "two" }]],
    ["a step that goes past its neighbours is one move", [{ move: "a", behind: "c" }]],
    ["a step put in is one change", [{ add: step("x", "iv", 1), behind: "b" }]],
    ["a step taken out is one change", [{ drop: "c" }]],
    [
      "a task put in with its steps is one change",
      [{ add: task("three", [step("x", "iv", 1)]), list: "tasks", behind: "one" }],
    ],
    ["a task taken out with its steps is one change", [{ drop: "two", list: "tasks" }]],
    ["a task put first is one move", [{ move: "two", list: "tasks", first: true }]],
    [
      "fields of one step are one change",
      [{ change: "f", set: { time: "PT1M", at: "hatch" }, unset: ["do"] }],
    ],
    ["fields of the head are one change", [{ head: { title: "Other", places: [] } }]],
  ])("[CHG3] are as few as can be: %s", (_, changes) => {
    const after = applied(LONG, changes);
    const found = changesBetween(LONG, after);
    expect(found).toHaveLength(1);
    expect(found).toEqual(changes);
  });

  it("[CHG3] leave out what a drop lets go by itself", () => {
    const before = fileWith([step("a", "ev1", 1), step("b", "ev2", 1, { after: ["a"] })]);
    expect(changesBetween(before, applied(before, [{ drop: "a" }]))).toEqual([{ drop: "a" }]);
    // An author who takes the whole field away has said so besides.
    const without = fileWith([step("b", "ev2", 1)]);
    expect(changesBetween(before, without)).toEqual([{ drop: "a" }, { change: "b", unset: ["after"] }]);
  });

  it("[CHG3] take steps out of a task before it goes, and into one once it is there", () => {
    const after = fileWith([
      task("three", [step("x", "iv", 1), step("f", "ev2", 3)]),
      task("one", LONG.tasks[0]?.steps ?? []),
    ]);
    expect(changesBetween(LONG, after)).toEqual([
      { add: task("three", [step("x", "iv", 1)]), list: "tasks", first: true },
      { move: "f", behind: "x" },
      { drop: "two", list: "tasks" },
    ]);
  });

  it("[CHG3] tell a list that is empty from one that is left out", () => {
    const bare = fileWith([step("a", "ev1", 1)]);
    const empty = { ...bare, places: [] };
    const one = { ...bare, places: [{ id: "hatch" }] };
    expect(changesBetween(bare, empty)).toEqual([{ head: { places: [] } }]);
    expect(changesBetween(empty, bare)).toEqual([{ head: {}, unset: ["places"] }]);
    expect(changesBetween(one, empty)).toEqual([{ drop: "hatch", list: "places" }]);
    expect(changesBetween(one, bare)).toEqual([
      { drop: "hatch", list: "places" },
      { head: {}, unset: ["places"] },
    ]);
    expect(changesBetween(bare, one)).toEqual([{ add: { id: "hatch" }, list: "places", first: true }]);
  });

  it("[CHG3] name two ways between the same places, which ids do not tell apart, as one value of the head", () => {
    const places = [{ id: "a" }, { id: "b" }];
    const short = { between: ["a", "b"] as [string, string], length: 1 };
    const long = { between: ["b", "a"] as [string, string], length: 9 };
    const before = fileWith([step("s", "ev1", 1)], { places, routes: [short] });
    const after = { ...before, routes: [short, long] };
    expect(parseProcedure(after).findings).toEqual([]);
    expect(changesBetween(before, after)).toEqual([{ head: { routes: [short, long] } }]);
    expect(applied(after, changesBetween(after, before))).toEqual(before);
    expect(applyChanges(after, [{ drop: "a b", list: "routes" }]).problem).toEqual({
      code: "several",
      list: "routes",
      id: "a b",
    });
  });

  test.prop(
    [
      fc
        .uniqueArray(fc.nat({ max: 40 }), { maxLength: 12 })
        .chain((ids) => fc.tuple(fc.constant(ids), fc.shuffledSubarray(ids, { minLength: ids.length }))),
    ],
    { numRuns: 300 },
  )("[CHG3] move the fewest steps: all but a longest run that keeps its order", ([ids, turned]) => {
    const fileOf = (order: readonly number[]) =>
      fileWith([
        task(
          "all",
          order.map((id) => step(`s-${id}`, "ev1", 1)),
        ),
      ]);
    const moves = changesBetween(fileOf(ids), fileOf(turned));
    // The textbook table of the longest common subsequence, in no hurry.
    const table = ids.map(() => turned.map(() => 0));
    const at = (i: number, j: number) => table[i]?.[j] ?? 0;
    for (const [i, id] of ids.entries())
      for (const [j, other] of turned.entries()) {
        const row = table[i];
        if (row) row[j] = id === other ? at(i - 1, j - 1) + 1 : Math.max(at(i - 1, j), at(i, j - 1));
      }
    expect(moves.every((change) => "move" in change)).toBe(true);
    expect(moves).toHaveLength(ids.length - at(ids.length - 1, turned.length - 1));
  });

  it("[CHG3] are found well within a second for 5,000 steps in another order", () => {
    const ids = Array.from({ length: 5000 }, (_, index) => `s-${index}`);
    const fileOf = (order: readonly string[]) =>
      fileWith(
        Array.from({ length: 10 }, (_, index) =>
          task(
            `t-${index}`,
            order.slice(index * 500, index * 500 + 500).map((id) => step(id, "ev1", 1)),
          ),
        ),
      );
    const [before, after] = [fileOf(ids), fileOf(ids.toReversed())];
    const from = performance.now();
    const found = changesBetween(before, after);
    expect(performance.now() - from).toBeLessThan(1000);
    expect(found).toHaveLength(5000);
  });
});

describe("the inverse of changes", () => {
  test.prop([procedureFiles, fc.array(anyChange, { maxLength: 8 })], { numRuns: 300 })(
    "[CHG4] gives the procedure back that they were applied to",
    (file, wanted) => {
      const changes = applicable(file, wanted);
      expect(applied(applied(frozen(file), changes), inverseOf(file, changes))).toEqual(file);
    },
  );

  test.prop([procedureFiles, fc.array(anyChange, { maxLength: 5 })], { numRuns: 300 })(
    "[CHG4] undoes one change after the other, backwards",
    (file, wanted) => {
      const files = [file];
      const changes = applicable(file, wanted);
      for (const change of changes) files.push(applied(files.at(-1) as ProcedureFile, [change]));
      for (const [index, change] of [...changes.entries()].toReversed()) {
        const [before, after] = [files[index] as ProcedureFile, files[index + 1] as ProcedureFile];
        expect(applied(after, inverseOf(before, [change]))).toEqual(before);
      }
    },
  );

  test.prop([procedureFiles], { numRuns: 100 })(
    "[CHG1] [CHG4] of a rename of any member is the rename back, and nothing is left that names the old id",
    (file) => {
      const lists = CHANGE_LISTS.filter((one) => one !== "routes" && one !== "pictures" && one !== "words");
      for (const list of lists) {
        for (const { id } of rollOf(file, list).members.values()) {
          const rename: Change = { rename: id, ...(list === "steps" ? {} : { list }), to: "fresh" };
          const renamed = applied(file, [rename]);
          expect(parseProcedure(renamed).findings.filter(({ level }) => level === "error")).toEqual([]);
          const [back, ...more] = inverseOf(file, [rename]);
          expect([Object.keys(back ?? {})[0], more]).toEqual(["rename", []]);
        }
      }
    },
  );

  it("[CHG4] of a rename is a rename, and of a contingency that was brought in all it takes to put it back", () => {
    const file = fileWith([step("a", "ev1", 1), step("b", "ev1", 1, { after: ["a"] })], {
      contingencies: [{ id: "tear", title: "A tear", tasks: [task("aid", [step("p", "ev2", 1)])] }],
    });
    expect(inverseOf(file, [{ rename: "a", to: "z" }])).toEqual([{ rename: "z", to: "a" }]);
    expect(inverseOf(file, [{ bring: "tear", behind: "a" }])).toEqual([
      { add: { id: "tear", title: "A tear", tasks: [] }, list: "contingencies", first: true },
      { move: "aid", list: "tasks", first: "tear" },
    ]);
  });

  it("[CHG4] of a rename takes nothing along that named the new id before there was one", () => {
    const file = fileWith([step("a", "ev1", 1), step("b", "ev1", 1, { after: ["z"] })]);
    const renamed = applied(file, [{ rename: "a", to: "z" }]);
    expect(applied(renamed, inverseOf(file, [{ rename: "a", to: "z" }]))).toEqual(file);
  });

  it("[CHG4] is not to be had of changes that cannot be applied", () => {
    expect(() => inverseOf(fileWith([step("a", "ev1", 1)]), [{ drop: "z" }])).toThrow(NeverAppliedError);
  });
});
