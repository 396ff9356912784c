import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { performersBeside, placedStep, stepAdded, waitsIn, waitsSet } from "../../../src/core/write/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const FILE = fileWith([
  task("out", [step("a", "ev1", 1), step("b", ["ev1", "ev2"], 2), step("c", "ev2", 3, { after: ["b"] })]),
  task("back", [
    step("d", "iv", 4, { after: [{ step: "a", lag: "PT1M", within: "PT9M" }, "c"] }),
    step("e", "iv", 1),
  ]),
]);

const typed = (id: string, text: string) => {
  const placed = placedStep(FILE, id);
  if (!placed) throw new Error(`no step ${id}`);
  return waitsIn(text, FILE, placed.step);
};

describe("what a step comes after, as it is typed in its cell", () => {
  it("[WRT3] is numbers or ids of steps with commas between, each with its lag behind a plus", () => {
    expect(typed("e", "1.3")).toEqual(["c"]);
    expect(typed("e", " 1.1 , B ; 2.1 + 5")).toEqual(["a", "b", { step: "d", lag: "PT5M" }]);
    expect(typed("e", "1.1 + 90 s")).toEqual([{ step: "a", lag: "PT1M30S" }]);
    expect(typed("e", "")).toEqual([]);
  });

  it("[WRT3] keeps what is not typed of what it came after before", () => {
    expect(typed("d", "1.1 + 2, 1.2")).toEqual([{ step: "a", lag: "PT2M", within: "PT9M" }, "b"]);
    expect(typed("d", "1.1")).toEqual([{ step: "a", within: "PT9M" }]);
  });

  it.each(["9.9", "nobody", "1.1 + soon", "2.2", "1.1, 9.9"])(
    "[WRT3] %j names no step that it can come after, and is not taken",
    (text) => expect(typed("e", text)).toBeNull(),
  );

  it("[WRT3] is set whole, taken out when it is empty, and refused where everybody would wait", () => {
    const set = (id: string, waits: readonly string[]) => {
      const { changes, problem } = waitsSet(FILE, id, [...waits]);
      if (problem) return problem.key;
      return placedStep(applyChanges(FILE, changes).file ?? FILE, id)?.step.after;
    };
    expect(set("d", ["b"])).toEqual(["b"]);
    expect(set("d", [])).toBeUndefined();
    expect(set("a", ["c"])).toBe("write/link-ring");
    expect(set("nothing", ["c"])).toBe("write/link-steps");
  });
});

describe("who does a new step", () => {
  it("[WRT2] is who does the one beside it, the one before its task, or who is named", () => {
    expect(performersBeside(FILE, "b")).toEqual(["ev1", "ev2"]);
    expect(performersBeside(fileWith([task("out", [])]), "task:out")).toEqual(["ev1"]);
    const added = (by?: readonly string[]) => {
      const { changes, rows } = stepAdded(FILE, "b", "New", by);
      return placedStep(applyChanges(FILE, changes ?? []).file ?? FILE, rows?.[0] ?? "")?.step.by;
    };
    expect(added()).toEqual(["ev1", "ev2"]);
    expect(added(["iv"])).toEqual(["iv"]);
  });
});
