import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { ProcedureChange, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { changedFile, parseProcedure } from "../../../src/core/procedure/index.ts";
import type { ContingencyId, StepId } from "../../../src/core/units/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const stepId = (id: string) => id as StepId;
const contingencyId = (id: string) => id as ContingencyId;

const FILE = fileWith(
  [
    task("one", [step("a", "ev1", 1), step("b", "ev2", 2, { after: ["a"] })]),
    task("two", [step("c", "ev1", 3, { after: [{ step: "a", lag: "PT1M" }, "b"] }), step("d", "iv", 4)]),
  ],
  {
    contingencies: [
      {
        id: "tear",
        title: "A tear",
        tasks: [task("aid", [step("patch", "ev1", 5), step("watch", "ev2", 5, { after: ["patch"] })])],
      },
      { id: "lost", title: "Contact lost", tasks: [task("call", [step("repeat", "iv", 1)])] },
    ],
  },
);

/** Deep-frozen: a change in place would throw. */
function frozen<Value>(value: Value): Value {
  if (typeof value === "object" && value !== null) {
    Object.freeze(value);
    for (const child of Object.values(value)) frozen(child);
  }
  return value;
}
frozen(FILE);

function changed(...changes: readonly ProcedureChange[]): ProcedureFile {
  const { file, problem } = changedFile(FILE, changes);
  if (!file) throw new Error(problem);
  return file;
}

const order = ({ tasks }: ProcedureFile) => tasks.map(({ steps }) => steps.map(({ id }) => id).join(" "));
const find = ({ tasks }: ProcedureFile, id: string) =>
  tasks.flatMap(({ steps }) => steps).find((one) => one.id === id);

describe("a changed procedure file", () => {
  it("[LOG2] without changes is the file", () => {
    expect(changedFile(FILE, [])).toEqual({ file: FILE, problem: null });
  });

  it("[LOG2] add: the step stands behind the one named, in its task", () => {
    const file = changed({ add: step("new", "ev1", 2), behind: stepId("a") });
    expect(order(file)).toEqual(["a new b", "c d"]);
    expect(find(file, "new")).toEqual(step("new", "ev1", 2));
  });

  it("[LOG2] drop: the step goes, and with it what came after it by name", () => {
    const file = changed({ drop: stepId("a") });
    expect(order(file)).toEqual(["b", "c d"]);
    expect([find(file, "b")?.after, find(file, "c")?.after]).toEqual([[], ["b"]]);
    expect(parseProcedure(file).findings).toEqual([]);
  });

  it("[LOG2] drop: what a contingency names is let go too", () => {
    const named = fileWith([step("a", "ev1", 1), step("b", "ev2", 1)], {
      contingencies: [
        { id: "tear", title: "A tear", tasks: [task("aid", [step("patch", "ev1", 5, { after: ["a"] })])] },
      ],
    });
    const before = parseProcedure(named).findings.filter(({ level }) => level === "error");
    const { file } = changedFile(named, [{ drop: stepId("a") }]);
    const after = parseProcedure(file).findings.filter(({ level }) => level === "error");
    expect(after.length).toBeLessThanOrEqual(before.length);
  });

  it("[LOG2] move: within a task and from one to another, its references kept", () => {
    expect(order(changed({ move: stepId("a"), behind: stepId("b") }))).toEqual(["b a", "c d"]);
    const file = changed({ move: stepId("b"), behind: stepId("d") });
    expect(order(file)).toEqual(["a", "c d b"]);
    expect(find(file, "b")).toEqual(find(FILE, "b"));
  });

  it("[LOG2] change: fields are set, others kept, the id never", () => {
    const file = changed({ change: stepId("b"), set: { time: "PT9M", by: ["iv"], id: "z" } });
    expect(find(file, "b")).toEqual({ ...find(FILE, "b"), time: "PT9M", by: ["iv"] });
    expect(find(file, "z")).toBeUndefined();
  });

  it("[LOG2] bring: the contingency's steps stand behind the one named, and it is a contingency no more", () => {
    const file = changed({ bring: contingencyId("tear"), behind: stepId("c") });
    expect(order(file)).toEqual(["a b", "c patch watch d"]);
    expect(file.contingencies?.map(({ id }) => id)).toEqual(["lost"]);
    expect(parseProcedure(file).findings).toEqual([]);
    expect(changedFile(file, [{ bring: contingencyId("tear"), behind: stepId("c") }])).toEqual({
      file: null,
      problem: 'there is no contingency "tear"',
    });
  });

  it("[LOG2] one after the other, each on what the one before left", () => {
    const file = changed(
      { add: step("new", "ev1", 2), behind: stepId("a") },
      { move: stepId("new"), behind: stepId("d") },
      { change: stepId("new"), set: { time: "PT7M" } },
      { drop: stepId("d") },
    );
    expect(order(file)).toEqual(["a b", "c new"]);
    expect(find(file, "new")?.time).toBe("PT7M");
  });

  it.each<readonly [string, ProcedureChange, string]>([
    ["add", { add: step("new", "ev1", 1), behind: stepId("gone") }, 'there is no step "gone"'],
    ["drop", { drop: stepId("gone") }, 'there is no step "gone"'],
    ["move", { move: stepId("gone"), behind: stepId("a") }, 'there is no step "gone"'],
    ["move behind", { move: stepId("a"), behind: stepId("gone") }, 'there is no step "gone"'],
    ["move to itself", { move: stepId("a"), behind: stepId("a") }, "a step cannot stand behind itself"],
    ["change", { change: stepId("gone"), set: {} }, 'there is no step "gone"'],
    ["bring", { bring: contingencyId("none"), behind: stepId("a") }, 'there is no contingency "none"'],
    ["bring behind", { bring: contingencyId("tear"), behind: stepId("gone") }, 'there is no step "gone"'],
  ])("[LOG2] %s of what is not there is told, and nothing more is done", (_, change, problem) => {
    expect(changedFile(FILE, [change, { drop: stepId("a") }])).toEqual({ file: null, problem });
  });

  const walk = frozen(
    JSON.parse(readFileSync("procedures/osier-ranging-head.procedure.json", "utf8")) as ProcedureFile,
  );
  const ids = walk.tasks.flatMap(({ steps }) => steps.map(({ id }) => stepId(id)));
  const oneOf = fc.constantFrom(...ids);
  const anyChange: fc.Arbitrary<ProcedureChange> = fc.oneof(
    oneOf.map((drop) => ({ drop })),
    fc.tuple(oneOf, oneOf).map(([move, behind]) => ({ move, behind })),
    fc.tuple(oneOf, fc.integer({ min: 0, max: 90 })).map(([id, minutes]) => ({
      change: id,
      set: { time: `PT${minutes}M` },
    })),
    oneOf.map((behind) => ({ add: step("fresh", "ev1", 1), behind })),
    fc
      .tuple(fc.constantFrom("none", ...(walk.contingencies ?? []).map(({ id }) => id)), oneOf)
      .map(([bring, behind]) => ({ bring: contingencyId(bring), behind })),
  );

  test.prop([fc.array(anyChange, { minLength: 1, maxLength: 4 })], { numRuns: 30 })(
    "[LOG2] of a whole walk parses or has findings, never throws, and leaves the file alone",
    (changes) => {
      const { file, problem } = changedFile(walk, changes);
      expect(file === null).toBe(problem !== null);
      if (!file) return;
      const { procedure, findings } = parseProcedure(file);
      if (!procedure) expect(findings.some(({ level }) => level === "error")).toBe(true);
    },
  );

  it("[LOG2] any one step of a whole walk may be dropped: only what hangs on its decision or watches is told", () => {
    for (const id of ids) {
      const { file } = changedFile(walk, [{ drop: id }]);
      const { procedure, findings } = parseProcedure(file);
      const errors = findings.filter(({ level }) => level === "error");
      expect(procedure === null).toBe(errors.length > 0);
      const dropped = find(walk, id);
      const isWatched = walk.watches?.some(({ from, until }) => from === id || until === id);
      if (errors.length > 0) expect([id, dropped?.decide !== undefined || isWatched]).toEqual([id, true]);
    }
  }, 20_000);
});
