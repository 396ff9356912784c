import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import type { Change, ProcedureFile } from "../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const text = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;
const procedure = (name: string, file: unknown) => scratch.write(`${name}.procedure.json`, text(file));
const changesFile = (name: string, changes: unknown) =>
  scratch.write(`${name}.json`, JSON.stringify(changes));

const BASE = fileWith(
  [
    task("one", [step("a", "ev1", 3), step("b", "ev2", 4, { after: ["a"] })]),
    task("two", [step("c", "ev1", 2)]),
  ],
  { limits: { elapsed: "PT8M" } },
);
const base = procedure("base", BASE);
const WALK = "procedures/osier-ranging-head.procedure.json";

/** The base with the steps of its first task replaced. */
const withFirst = (...steps: ProcedureFile["tasks"][number]["steps"]) => ({
  ...BASE,
  tasks: [task("one", steps), ...BASE.tasks.slice(1)],
});

describe("compare", () => {
  const after = procedure(
    "after",
    withFirst(step("a", "ev1", 6), step("x", "iv", 1), step("b", "ev2", 4, { after: ["a"] })),
  );

  it("[CHG3] [CHG7] --json prints the changes and the effect, in seconds, null where a step is not", async () => {
    const { status, out, err } = await tetherline("compare", base, after, "--json");
    expect([status, err]).toEqual([0, ""]);
    const { changes, effect } = JSON.parse(out);
    expect(changes).toEqual([
      { add: step("x", "iv", 1), behind: "a" },
      { change: "a", set: { time: "PT6M" } },
    ]);
    expect(effect).toMatchObject({
      finish: { before: 420, after: 600 },
      margin: { before: 60, after: -120 },
      withinLimit: { before: 1, after: 0 },
      criticalPath: { before: ["a", "b"], after: ["a", "b"] },
      findings: { new: [{ level: "error", code: "time/over-limit", steps: ["b"] }], gone: [], same: [] },
    });
    expect(effect.steps).toEqual([
      { id: "a", start: { before: 0, after: 0 }, slack: { before: 0, after: 0 } },
      { id: "x", start: { before: null, after: 0 }, slack: { before: null, after: 540 } },
      { id: "b", start: { before: 180, after: 360 }, slack: { before: 0, after: 0 } },
      { id: "c", start: { before: 180, after: 360 }, slack: { before: 120, after: 120 } },
    ]);
    expect(effect.waits).toEqual({
      before: [{ step: "b", crew: "ev2", seconds: 180, on: { crew: ["ev1"] } }],
      after: [{ step: "b", crew: "ev2", seconds: 360, on: { crew: ["ev1"] } }],
    });
  });

  it("[CHG3] what --json prints makes the second of the first when change is given it", async () => {
    const { out } = await tetherline("compare", base, after, "--json");
    const changed = await tetherline("change", base, scratch.write("compared.json", out));
    expect([changed.status, JSON.parse(changed.out)]).toEqual([0, JSON.parse(readFileSync(after, "utf8"))]);
  });

  it("[CHG7] prints changes by task and the effect in words", async () => {
    const { status, out, err } = await tetherline("compare", base, after);
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain(
      "2 changes\n\nTask one (one)\n  step x: added behind a; Do x\n  step a: time PT3M → PT6M\n",
    );
    expect(out).toMatch(/Finish +0:07:00 +0:10:00\n/);
    expect(out).toMatch(/Margin +0:01:00 +−0:02:00\n/);
    expect(out).toMatch(/Within the limit +> 99 % +< 1 %\n/);
    expect(out).toMatch(/^b +0:03:00 +0:06:00 +0:00:00 +0:00:00$/m);
    expect(out).toContain("Critical path: a → b\n");
    expect(out).toContain(
      "Findings: 1 new, 0 gone, 0 the same\n  + ERROR The plan runs 2 min over the elapsed limit.\n",
    );
  });

  it("[CHG3] says that a procedure is the same as itself, however its text is laid out", async () => {
    const other = scratch.write("other.procedure.json", JSON.stringify(BASE));
    const { status, out } = await tetherline("compare", base, other, "--json");
    expect([status, JSON.parse(out).changes]).toEqual([0, []]);
    const words = await tetherline("compare", base, other);
    expect(words.out).toContain("The same procedure.\n");
    expect(words.out).toContain("No step starts at another time or has other slack.");
  });

  it("[CHG7] --orbit and --start light both sides as they light a plan", async () => {
    const orbit = ["--start", "2031-04-02T09:00:00Z", "--orbit", orbitFile()];
    const plan = JSON.parse((await tetherline("plan", WALK, ...orbit, "--json")).out);
    const { effect } = JSON.parse((await tetherline("compare", WALK, WALK, ...orbit, "--json")).out);
    expect(effect.finish).toEqual({ before: plan.finish, after: plan.finish });
    expect(effect.withinLimit).toEqual({ before: plan.risk.withinLimit, after: plan.risk.withinLimit });
    expect(effect.criticalPath.after).toEqual(plan.criticalPath);
    expect(
      effect.steps.map(({ id, start }: { id: string; start: { after: number } }) => [id, start.after]),
    ).toEqual(plan.steps.map(({ id, start }: { id: string; start: number }) => [id, start]));
  });

  it.each([
    ["a file that is not there", ["none.json", base], /none\.json/],
    [
      "a file with errors",
      [base, procedure("dangling", fileWith([step("a", "ev9", 1)]))],
      /dangling\.procedure\.json has 1 error, first at line \d+/,
    ],
    ["no JSON", [scratch.write("no.json", "{"), base], /no\.json has 1 error/],
    ["an orbit without a start", [base, base, "--orbit", "x.tle"], /--orbit needs --start/],
    ["one file", [base], /missing required argument 'after'/i],
  ])("[CHG7] %s cannot be used", async (_, args, sentence) => {
    const { status, out, err } = await tetherline("compare", ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^[^\n]+\n$/);
  });
});

function orbitFile(): string {
  const lines = [
    "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753",
    "2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667",
  ];
  return scratch.write("orbit.tle", `${lines.join("\n")}\n`);
}

describe("change", () => {
  it("[CHG2] [CHG6] prints the changed file and leaves the rest of its bytes alone", async () => {
    const changes = changesFile("time", [
      { change: "go-for-hatch", set: { time: "PT9M" } },
    ] satisfies Change[]);
    const { status, out, err } = await tetherline("change", WALK, changes);
    expect([status, err]).toEqual([0, ""]);
    const lines = (all: string) => all.split("\n");
    const before = lines(readFileSync(WALK, "utf8"));
    expect(lines(out).filter((line, index) => line !== before[index])).toEqual(['          "time": "PT9M",']);
  });

  it("[CHG6] without changes prints the same bytes", async () => {
    const { out } = await tetherline("change", WALK, changesFile("none", []));
    expect(out).toBe(readFileSync(WALK, "utf8"));
  });

  it("[CHG6] --out writes a file, the one that is changed too, and prints nothing", async () => {
    const file = procedure("kept", BASE);
    const changes = changesFile("drop", [{ drop: "a" }]);
    const ran = await tetherline("change", file, changes, "--out", file);
    expect(ran).toEqual({ status: 0, out: "", err: "" });
    expect(JSON.parse(scratch.read("kept.procedure.json"))).toEqual(
      withFirst(step("b", "ev2", 4, { after: [] })),
    );
  });

  it("[CHG2] ends with 1 and the reason when a change cannot be made, and writes nothing", async () => {
    const changes = changesFile("late", [{ drop: "a" }, { move: "b", behind: "a" }]);
    const ran = await tetherline("change", base, changes, "--out", scratch.path("unwritten.json"));
    expect(ran).toEqual({
      status: 1,
      out: "",
      err: `Change 2 of ${changes} cannot be made: step "a": there is none.\n`,
    });
    expect(() => scratch.read("unwritten.json")).toThrow();
  });

  it("[CHG1] [CHG2] what is left dangling is told with the result, which is written all the same", async () => {
    const changes = changesFile("iv", [{ drop: "ev2", list: "crew" }]);
    const { status, out, err } = await tetherline("change", base, changes);
    expect(status).toBe(1);
    expect(JSON.parse(out).crew).toHaveLength(2);
    expect(err).toMatch(/^The result: error at line \d+, column \d+: There is no crew member "ev2"\..*\n$/);
  });

  it("[CHG2] mends a file that names what is not there", async () => {
    const file = procedure("broken", fileWith([step("a", "ev1", 1), step("b", "ev1", 1, { after: ["z"] })]));
    const { status, out, err } = await tetherline(
      "change",
      file,
      changesFile("mend", [{ change: "b", set: { after: ["a"] } }]),
    );
    expect([status, err]).toEqual([0, ""]);
    expect(JSON.parse(out).tasks[0].steps[1].after).toEqual(["a"]);
  });

  it.each([
    [
      "changes that are none",
      [base, changesFile("odd", [{ drop: "a" }, { dorp: "a" }])],
      /odd\.json is of no use: change 2 says none of add, drop/,
    ],
    [
      "changes that are no JSON",
      [base, scratch.write("torn.json", "[{")],
      /torn\.json is of no use: it is not valid JSON\./,
    ],
    [
      "a file of another shape",
      [procedure("shapeless", { format: "tetherline.procedure/1" }), changesFile("x", [])],
      /shapeless\.procedure\.json has \d+ errors, first/,
    ],
    [
      "a file with a doubled key",
      [
        scratch.write("twice.procedure.json", text(BASE).replace('"id"', '"id": "x", "id"')),
        changesFile("y", []),
      ],
      /stands twice/,
    ],
    ["no changes", [base], /missing required argument 'changes'/i],
  ])("[CHG2] %s cannot be used", async (_, args, sentence) => {
    const { status, out, err } = await tetherline("change", ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^[^\n]+\n$/);
  });
});

describe("merge", () => {
  const ours = procedure("ours", withFirst(step("a", "ev1", 5), step("b", "ev2", 4, { after: ["a"] })));
  const theirs = procedure("theirs", {
    ...withFirst(step("a", "ev1", 3), step("b", "ev2", 6, { after: ["a"] })),
    revision: "B",
  });

  it("[CHG5] [CHG6] prints the merged file, in the text of ours", async () => {
    const { status, out, err } = await tetherline("merge", base, ours, theirs);
    expect([status, err]).toEqual([0, ""]);
    expect(JSON.parse(out)).toEqual({
      ...withFirst(step("a", "ev1", 5), step("b", "ev2", 6, { after: ["a"] })),
      revision: "B",
    });
    expect(out.split("\n").filter((line) => !readFileSync(ours, "utf8").split("\n").includes(line))).toEqual([
      '          "time": "PT6M",',
      "  },",
      '  "revision": "B"',
    ]);
    expect((await tetherline("merge", base, ours, theirs, "--json")).out).toBe(out);
    expect(JSON.parse((await tetherline("merge", base, theirs, ours)).out)).toEqual(JSON.parse(out));
  });

  it("[CHG5] --out writes it, and --json then says that there is no conflict", async () => {
    const to = scratch.path("merged.json");
    expect(await tetherline("merge", base, ours, theirs, "--out", to)).toEqual({
      status: 0,
      out: "",
      err: "",
    });
    const { out } = await tetherline("merge", base, ours, theirs, "--out", to, "--json");
    expect(JSON.parse(out)).toEqual({ conflicts: [] });
    expect(JSON.parse(scratch.read("merged.json")).revision).toBe("B");
  });

  it("[CHG5] ends with 1 and the conflicts, with both sides, and writes nothing", async () => {
    const other = procedure(
      "conflicting",
      withFirst(step("a", "ev1", 9), step("b", "ev2", 4, { after: ["a"] })),
    );
    const { status, out, err } = await tetherline(
      "merge",
      base,
      ours,
      other,
      "--json",
      "--out",
      scratch.path("torn-merge.json"),
    );
    expect([status, err]).toEqual([1, ""]);
    expect(JSON.parse(out)).toEqual({
      conflicts: [{ list: "steps", id: "a", field: "time", base: "PT3M", ours: "PT5M", theirs: "PT9M" }],
    });
    expect(() => scratch.read("torn-merge.json")).toThrow();
    const words = await tetherline("merge", base, ours, other);
    expect([words.status, words.out]).toEqual([1, ""]);
    expect(words.err).toBe(
      '1 conflict: both sides made something else of this, and nothing is chosen.\n  step a: time\n    base   "PT3M"\n    ours   "PT5M"\n    theirs "PT9M"\n',
    );
  });

  it("[CHG5] the merged procedure is checked again: what one dropped and the other names is told", async () => {
    const without = procedure("without", { ...BASE, tasks: [BASE.tasks[0]] });
    const naming = procedure(
      "naming",
      withFirst(step("a", "ev1", 3, { after: ["c"] }), step("b", "ev2", 4, { after: ["a"] })),
    );
    const { status, out, err } = await tetherline("merge", base, without, naming);
    expect([status, JSON.parse(out).tasks.length]).toEqual([1, 1]);
    expect(err).toMatch(/^The result: error at line \d+, column \d+: There is no step "c"\..*\n$/);
  });

  it.each([
    [
      "a base with errors",
      [procedure("spoiled", fileWith([step("a", "ev9", 1)])), ours, theirs],
      /spoiled\.procedure\.json has 1 error/,
    ],
    ["two files", [base, ours], /missing required argument 'theirs'/i],
    ["a folder to write to", [base, ours, theirs, "--out", "/"], /cannot be written/],
  ])("[CHG5] %s cannot be used", async (_, args, sentence) => {
    const { status, out, err } = await tetherline("merge", ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^[^\n]+\n$/);
  });
});
