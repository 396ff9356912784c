import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { MergeDecisions, MergeSide } from "../../../src/core/changes/index.ts";
import { applyChanges, conflictName, mergeChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { anyChange, frozen, procedureFiles } from "../procedure-files.ts";

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

/** Decides every conflict for one side, also those that come of what was decided before. */
function decidedFor(
  side: MergeSide,
  base: ProcedureFile,
  ours: ProcedureFile,
  theirs: ProcedureFile,
): ReturnType<typeof mergeChanges> {
  let decisions: MergeDecisions = new Map();
  for (let round = 0; round < 20; round += 1) {
    const merged = mergeChanges(base, ours, theirs, decisions);
    if (merged.file) return merged;
    decisions = new Map([...decisions, ...merged.conflicts.map((one) => [conflictName(one), side] as const)]);
  }
  return mergeChanges(base, ours, theirs, decisions);
}

const BASE = fileWith([
  task("one", [step("a", "ev1", 3), step("b", "ev2", 3, { after: ["a"] })]),
  task("two", [step("c", "ev1", 3)]),
]);

const side = (change: Change) => changed(BASE, [change]);

describe("a merge with decisions", () => {
  test.prop([revisions, fc.constantFrom<MergeSide>("base", "ours", "theirs")], { numRuns: 300 })(
    "[CHG5] [WRT8] comes to a file once every conflict is decided, whichever way",
    ({ base, ours, theirs }, which) => {
      expect(decidedFor(which, base, ours, theirs).conflicts).toEqual([]);
    },
  );

  test.prop([revisions], { numRuns: 200 })(
    "[CHG5] [WRT8] decided for ours is what is decided for theirs with the sides turned round",
    ({ base, ours, theirs }) => {
      expect(decidedFor("theirs", base, theirs, ours).file).toEqual(
        decidedFor("ours", base, ours, theirs).file,
      );
    },
  );

  const OURS = side({ change: "a", set: { time: "PT5M" } });
  const THEIRS = side({ change: "a", set: { time: "PT9M" } });
  const NAME = conflictName({ list: "steps", id: "a", field: "time" });

  it.each([
    ["base", "PT3M"],
    ["ours", "PT5M"],
    ["theirs", "PT9M"],
  ] as const)("[CHG5] [WRT8] takes a field from %s", (which, time) => {
    const { file, decided } = mergeChanges(BASE, OURS, THEIRS, new Map([[NAME, which]]));
    expect(file?.tasks[0]?.steps[0]).toMatchObject({ id: "a", time });
    expect(decided).toHaveLength(1);
  });

  it("[CHG5] [WRT8] passes over a decision about what is no conflict", () => {
    expect(mergeChanges(BASE, OURS, BASE, new Map([[NAME, "theirs"]])).file).toEqual(OURS);
  });

  const dropped = side({ drop: "a" });
  const whole = conflictName({ list: "steps", id: "a", field: null });

  it("[CHG5] [WRT8] a step that is kept against a drop gets back what named it", () => {
    const { file } = mergeChanges(BASE, dropped, THEIRS, new Map([[whole, "theirs"]]));
    expect(file).toEqual(THEIRS);
  });

  it("[CHG5] [WRT8] a step that goes lets go what named it", () => {
    const { file } = mergeChanges(BASE, dropped, THEIRS, new Map([[whole, "ours"]]));
    expect(file).toEqual(dropped);
  });

  it("[CHG5] [WRT8] a task that was dropped stays, or goes with what was put into it", () => {
    const gone = side({ drop: "two", list: "tasks" });
    const grown = side({ add: step("d", "ev1", 2), behind: "c" });
    const { conflicts } = mergeChanges(BASE, gone, grown);
    expect(conflicts.map(conflictName)).toEqual([conflictName({ list: "tasks", id: "two", field: null })]);
    const decided = (which: MergeSide) => decidedFor(which, BASE, gone, grown).file;
    expect(decided("ours")).toEqual(gone);
    expect(decided("theirs")?.tasks.map(({ id }) => id)).toEqual(["one", "two"]);
    expect(decided("theirs")?.tasks[1]?.steps.map(({ id }) => id)).toContain("d");
  });

  it("[CHG5] [WRT8] what was added twice is taken from one side, or left out", () => {
    const one = side({ add: step("x", "ev1", 2), behind: "a" });
    const other = side({ add: step("x", "ev2", 4), behind: "a" });
    const times = (which: MergeSide) =>
      decidedFor(which, BASE, one, other).file?.tasks[0]?.steps.find(({ id }) => id === "x")?.time ?? null;
    expect([times("ours"), times("theirs"), times("base")]).toEqual(["PT2M", "PT4M", null]);
  });
});
