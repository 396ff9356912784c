import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Conflict } from "../../../src/core/changes/index.ts";
import { applyChanges, mergeChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { anyChange, frozen, procedureFiles } from "../procedure-files.ts";

/** What can be applied of changes that leave the ids of others alone, one after the other. */
function changed(file: ProcedureFile, changes: readonly Change[]): ProcedureFile {
  return changes.reduce((current, change) => applyChanges(current, [change]).file ?? current, file);
}

const revisions = fc
  .tuple(procedureFiles, fc.array(anyChange, { maxLength: 6 }), fc.array(anyChange, { maxLength: 6 }))
  .map(([base, ours, theirs]) => ({
    base: frozen(base),
    ours: frozen(changed(base, ours)),
    theirs: frozen(changed(base, theirs)),
  }));

const turned = (conflicts: readonly Conflict[]) =>
  conflicts.map(({ ours, theirs, ...rest }) => ({ ...rest, ours: theirs, theirs: ours }));
const inOrder = (conflicts: readonly Conflict[]) =>
  conflicts.map((one) => JSON.stringify([one.list, one.id, one.field, one])).sort();

describe("a merge of two revisions", () => {
  test.prop([revisions], { numRuns: 300 })(
    "[CHG5] is the same whichever side is ours, conflicts included",
    ({ base, ours, theirs }) => {
      const one = mergeChanges(base, ours, theirs);
      const other = mergeChanges(base, theirs, ours);
      expect(other.file).toEqual(one.file);
      expect(inOrder(turned(other.conflicts))).toEqual(inOrder(one.conflicts));
    },
  );

  test.prop([revisions], { numRuns: 200 })(
    "[CHG5] with what nobody changed, or with itself, is the other",
    ({ base, ours }) => {
      expect(mergeChanges(base, ours, base)).toMatchObject({ file: ours, conflicts: [] });
      expect(mergeChanges(base, base, ours).file).toEqual(ours);
      expect(mergeChanges(base, ours, ours).file).toEqual(ours);
    },
  );

  test.prop([revisions], { numRuns: 200 })(
    "[CHG5] keeps from each side what the other left alone",
    ({ base, ours, theirs }) => {
      const { file } = mergeChanges(base, ours, theirs);
      if (!file) return;
      // Whoever goes on from the merged file to either side again finds nothing of that side to be added anew.
      expect(mergeChanges(base, file, ours).file).toEqual(file);
      expect(mergeChanges(base, theirs, file).file).toEqual(file);
    },
  );

  const BASE = fileWith(
    [
      task(
        "one",
        ["a", "b", "c"].map((id) => step(id, "ev1", 3)),
      ),
      task(
        "two",
        ["d", "e"].map((id) => step(id, "ev2", 3)),
      ),
      task("three", [step("f", "iv", 3)]),
    ],
    {
      places: [{ id: "hatch" }, { id: "boom" }],
      routes: [{ between: ["hatch", "boom"], length: 4 }],
      contingencies: [{ id: "tear", title: "A tear", tasks: [task("aid", [step("p", "ev1", 5)])] }],
    },
  );
  const OF_ONE: readonly Change[] = [
    { change: "a", set: { time: "PT9M" } },
    { drop: "b" },
    { add: step("x", "ev1", 1), behind: "a" },
    { move: "c", first: "one" },
    { change: "one", list: "tasks", set: { title: "Other" } },
    { change: "hatch", list: "places", set: { label: "Hatch" } },
    { add: { id: "mast" }, list: "places", behind: "hatch" },
    { head: { revision: "B" } },
  ];
  const OF_TWO: readonly Change[] = [
    { change: "e", set: { time: "PT9M" } },
    { drop: "d" },
    { add: step("y", "ev1", 1), behind: "e" },
    { add: task("four", [step("z", "iv", 1)]), list: "tasks", behind: "three" },
    { move: "three", list: "tasks", behind: "four" },
    { change: "boom", list: "places", set: { label: "Boom" } },
    { change: "hatch boom", list: "routes", set: { length: 5 } },
    { head: { summary: "Short" } },
    { change: "tear", list: "contingencies", set: { title: "Torn" } },
  ];

  test.prop([fc.subarray([...OF_ONE]), fc.subarray([...OF_TWO])], { numRuns: 300 })(
    "[CHG5] of changes that touch different members or fields is what both make one after the other",
    (one, two) => {
      const both = changed(changed(BASE, one), two);
      expect(changed(changed(BASE, two), one)).toEqual(both);
      expect(mergeChanges(BASE, changed(BASE, one), changed(BASE, two))).toMatchObject({
        file: both,
        conflicts: [],
        findings: [],
      });
    },
  );

  const conflictsOf = (ours: readonly Change[], theirs: readonly Change[]) =>
    mergeChanges(BASE, changed(BASE, ours), changed(BASE, theirs)).conflicts;

  it.each<readonly [string, Change[], Change[], Partial<Conflict>[]]>([
    [
      "one field",
      [{ change: "a", set: { time: "PT5M" } }],
      [{ change: "a", set: { time: "PT4M" } }],
      [{ list: "steps", id: "a", field: "time", base: "PT3M", ours: "PT5M", theirs: "PT4M" }],
    ],
    [
      "a field that one side removes",
      [{ change: "a", unset: ["time"] }],
      [{ change: "a", set: { time: "PT4M" } }],
      [{ list: "steps", id: "a", field: "time", base: "PT3M", ours: null, theirs: "PT4M" }],
    ],
    [
      "a step dropped here and changed there",
      [{ drop: "a" }],
      [{ change: "a", set: { time: "PT4M" } }],
      [
        {
          list: "steps",
          id: "a",
          field: null,
          base: step("a", "ev1", 3),
          ours: null,
          theirs: step("a", "ev1", 4),
        },
      ],
    ],
    [
      "a step dropped here and moved to another task there",
      [{ move: "a", behind: "d" }],
      [{ drop: "a" }],
      [{ list: "steps", id: "a", field: null, theirs: null }],
    ],
    [
      "a step moved to two tasks",
      [{ move: "a", behind: "d" }],
      [{ move: "a", behind: "f" }],
      [{ list: "steps", id: "a", field: "task", base: "one", ours: "two", theirs: "three" }],
    ],
    [
      "a task moved to two homes",
      [{ move: "three", list: "tasks", first: "tear" }],
      [
        { drop: "f" },
        { add: { id: "lost", title: "Lost", tasks: [] }, list: "contingencies", first: true },
        { move: "three", list: "tasks", first: "lost" },
      ],
      [{ list: "tasks", id: "three", field: "contingency", base: null, ours: "tear", theirs: "lost" }],
    ],
    [
      "one id added twice",
      [{ add: step("x", "ev1", 1), behind: "a" }],
      [{ add: step("x", "ev1", 2), behind: "a" }],
      [{ list: "steps", id: "x", field: null, base: null }],
    ],
    [
      "a task dropped that the other side puts a step into",
      [{ drop: "three", list: "tasks" }],
      [{ add: step("x", "ev1", 1), behind: "f" }],
      [{ list: "tasks", id: "three", field: null, ours: null }],
    ],
    [
      "the head",
      [{ head: { title: "One" } }],
      [{ head: { title: "Two" } }],
      [{ list: "head", id: null, field: "title", base: "Trial", ours: "One", theirs: "Two" }],
    ],
    [
      "a ring of order wishes",
      [{ move: "c", behind: "a" }],
      [{ move: "b", first: "one" }],
      [
        {
          list: "steps",
          id: "one",
          field: "order",
          base: ["a", "b", "c"],
          ours: ["a", "c", "b"],
          theirs: ["b", "a", "c"],
        },
      ],
    ],
    [
      "two steps added in two orders",
      [
        { add: step("x", "ev1", 1), behind: "a" },
        { add: step("y", "ev1", 1), behind: "x" },
      ],
      [
        { add: step("y", "ev1", 1), behind: "a" },
        { add: step("x", "ev1", 1), behind: "y" },
      ],
      [{ field: "order", base: [], ours: ["x", "y"], theirs: ["y", "x"] }],
    ],
    [
      "a route, whichever way it is written",
      [{ change: "hatch boom", list: "routes", set: { length: 1 } }],
      [{ change: "boom hatch", list: "routes", set: { length: 2 } }],
      [{ list: "routes", id: "hatch boom", field: "length", base: 4, ours: 1, theirs: 2 }],
    ],
    [
      "two things at once",
      [{ change: "a", set: { time: "PT5M" } }, { head: { title: "One" } }],
      [{ change: "a", set: { time: "PT4M" } }, { head: { title: "Two" } }],
      [{ id: "a" }, { field: "title" }],
    ],
  ])("[CHG5] is a conflict over %s", (_, ours, theirs, expected) => {
    const found = conflictsOf(ours, theirs);
    expect(found).toHaveLength(expected.length);
    expect(found).toMatchObject(expected);
    expect(mergeChanges(BASE, changed(BASE, ours), changed(BASE, theirs)).file).toBeNull();
  });

  const merged = (ours: readonly Change[], theirs: readonly Change[]) => {
    const { file } = mergeChanges(BASE, changed(BASE, ours), changed(BASE, theirs));
    if (!file) throw new Error("there is a conflict");
    return file.tasks.map(({ steps }) => steps.map(({ id }) => id).join(" "));
  };

  it("[CHG5] takes what both made alike", () => {
    expect(merged([{ drop: "a" }], [{ drop: "a" }])).toEqual(["b c", "d e", "f"]);
    const add: Change = { add: step("x", "ev1", 1), behind: "a" };
    expect(merged([add], [add, { drop: "e" }])).toEqual(["a x b c", "d", "f"]);
  });

  it("[CHG5] keeps together what each side puts in at one place, in one order whichever side is ours", () => {
    const one: Change[] = [
      { add: step("x1", "ev1", 1), behind: "a" },
      { add: step("z2", "ev1", 1), behind: "x1" },
    ];
    const two: Change[] = [
      { add: step("y2", "ev1", 1), behind: "a" },
      { add: step("y1", "ev1", 1), behind: "a" },
    ];
    expect(merged(one, two)).toEqual(["a x1 z2 y1 y2 b c", "d e", "f"]);
    expect(merged(two, one)).toEqual(["a x1 z2 y1 y2 b c", "d e", "f"]);
  });

  it("[CHG5] moves what one side moved, past what the other put in or took out", () => {
    expect(merged([{ move: "a", behind: "c" }], [{ drop: "b" }])).toEqual(["c a", "d e", "f"]);
    expect(merged([{ move: "a", behind: "e" }], [{ add: step("x", "ev1", 1), behind: "d" }])).toEqual([
      "b c",
      "d x e a",
      "f",
    ]);
    expect(
      merged([{ move: "two", list: "tasks", behind: "three" }], [{ add: step("x", "ev1", 1), behind: "d" }]),
    ).toEqual(["a b c", "f", "d x e"]);
  });

  it("[CHG5] [CHG1] lets go of a dropped step what named it before, and finds what came to name it", () => {
    const base = changed(BASE, [{ change: "c", set: { after: ["a"] } }]);
    const dropped = changed(base, [{ drop: "a" }]);
    const more = changed(base, [{ change: "c", set: { after: ["a", "b"] } }]);
    expect(mergeChanges(base, dropped, more).file?.tasks[0]?.steps[1]?.after).toEqual(["b"]);
    const anew = changed(base, [{ change: "e", set: { after: ["a"] } }]);
    const { file, conflicts, findings } = mergeChanges(base, dropped, anew);
    expect(conflicts).toEqual([]);
    expect(file?.tasks[1]?.steps[1]?.after).toEqual(["a"]);
    expect(findings.map(({ code, steps, things }) => [code, steps, things])).toEqual([
      ["file/no-such-reference", ["e"], ["a"]],
    ]);
  });

  it("[CHG5] takes lists as one value whose ids do not tell their members apart", () => {
    const twice = {
      ...BASE,
      routes: [...(BASE.routes ?? []), { between: ["boom", "hatch"] as [string, string], length: 9 }],
    };
    const other = changed(BASE, [{ head: { title: "Other" } }]);
    expect(mergeChanges(BASE, twice, other).file).toEqual({ ...twice, title: "Other" });
    const longer = changed(BASE, [{ change: "hatch boom", list: "routes", set: { length: 5 } }]);
    expect(mergeChanges(BASE, twice, longer).conflicts).toMatchObject([
      { list: "head", id: null, field: "routes" },
    ]);
  });

  it("[CHG5] merges 5,000 steps in two orders, the most that a file may have", () => {
    const ids = Array.from({ length: 5000 }, (_, index) => `s-${index}`);
    const fileOf = (order: readonly string[]) =>
      fileWith([
        task(
          "all",
          order.map((id) => step(id, "ev1", 1)),
        ),
      ]);
    const ours = fileOf([...ids.slice(1), "s-0"]);
    const theirs = fileOf([...ids.slice(0, 10), ...ids.slice(20), ...ids.slice(10, 20)]);
    const { file } = mergeChanges(fileOf(ids), ours, theirs);
    expect(file?.tasks[0]?.steps.slice(-12).map(({ id }) => id)).toEqual(
      ["s-4998", "s-4999", ...ids.slice(10, 20)].slice(1).concat("s-0").slice(-12),
    );
  });
});
