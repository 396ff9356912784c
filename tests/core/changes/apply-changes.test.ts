import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges, changeProblemMessage } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT, FORMATS, parseProcedure } from "../../../src/core/procedure/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { anyChange, frozen, procedureFiles } from "../procedure-files.ts";

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

frozen(FILE);

function changedIn(file: ProcedureFile, ...changes: readonly Change[]): ProcedureFile {
  const result = applyChanges(file, changes);
  if (result.problem) throw new Error(result.problem.code);
  return result.file;
}
const changed = (...changes: readonly Change[]) => changedIn(FILE, ...changes);

/** Why the last of some changes cannot be applied, and which it is. */
function refusal(file: ProcedureFile, ...changes: readonly Change[]): [number, string] | null {
  const result = applyChanges(file, changes);
  return result.problem && [result.index, inWords(changeProblemMessage(result.problem))];
}

const order = ({ tasks }: ProcedureFile) => tasks.map(({ steps }) => steps.map(({ id }) => id).join(" "));
const find = ({ tasks }: ProcedureFile, id: string) =>
  tasks.flatMap(({ steps }) => steps).find((one) => one.id === id);

describe("a changed procedure file", () => {
  it("[LOG2] without changes is the file", () => {
    expect(applyChanges(FILE, [])).toEqual({ file: FILE, problem: null });
  });

  it("[LOG2] add: the step stands behind the one named, in its task", () => {
    const file = changed({ add: step("new", "ev1", 2), behind: "a" });
    expect(order(file)).toEqual(["a new b", "c d"]);
    expect(find(file, "new")).toEqual(step("new", "ev1", 2));
  });

  it("[LOG2] drop: the step goes, and with it what came after it by name", () => {
    const file = changed({ drop: "a" });
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
    const file = changedIn(named, { drop: "a" });
    const after = parseProcedure(file).findings.filter(({ level }) => level === "error");
    expect(after.length).toBeLessThanOrEqual(before.length);
  });

  it("[LOG2] move: within a task and from one to another, its references kept", () => {
    expect(order(changed({ move: "a", behind: "b" }))).toEqual(["b a", "c d"]);
    const file = changed({ move: "b", behind: "d" });
    expect(order(file)).toEqual(["a", "c d b"]);
    expect(find(file, "b")).toEqual(find(FILE, "b"));
  });

  it("[LOG2] change: fields are set, others kept, the id never", () => {
    const file = changed({ change: "b", set: { time: "PT9M", by: ["iv"], id: "z" } });
    expect(find(file, "b")).toEqual({ ...find(FILE, "b"), time: "PT9M", by: ["iv"] });
    expect(find(file, "z")).toBeUndefined();
  });

  it("[LOG2] [CHG1] bring: the contingency's tasks stand after the task of the step named, and it is a contingency no more", () => {
    const file = changed({ bring: "tear", behind: "c" });
    expect(order(file)).toEqual(["a b", "c d", "patch watch"]);
    expect(order(changed({ bring: "tear", behind: "b" }))).toEqual(["a b", "patch watch", "c d"]);
    expect(file.tasks.at(-1)).toEqual(FILE.contingencies?.[0]?.tasks[0]);
    expect(file.contingencies?.map(({ id }) => id)).toEqual(["lost"]);
    expect(parseProcedure(file).findings).toEqual([]);
    expect(refusal(file, { bring: "tear", behind: "c" })).toEqual([0, 'contingency "tear": there is none']);
  });

  it("[LOG2] one after the other, each on what the one before left", () => {
    const file = changed(
      { add: step("new", "ev1", 2), behind: "a" },
      { move: "new", behind: "d" },
      { change: "new", set: { time: "PT7M" } },
      { drop: "d" },
    );
    expect(order(file)).toEqual(["a b", "c new"]);
    expect(find(file, "new")?.time).toBe("PT7M");
  });

  it.each<readonly [string, Change, string]>([
    ["add", { add: step("new", "ev1", 1), behind: "gone" }, 'step "gone": there is none'],
    ["drop", { drop: "gone" }, 'step "gone": there is none'],
    ["move", { move: "gone", behind: "a" }, 'step "gone": there is none'],
    ["move behind", { move: "a", behind: "gone" }, 'step "gone": there is none'],
    ["move to itself", { move: "a", behind: "a" }, "step: cannot stand behind itself"],
    ["change", { change: "gone", set: {} }, 'step "gone": there is none'],
    ["bring", { bring: "none", behind: "a" }, 'contingency "none": there is none'],
    ["bring behind", { bring: "tear", behind: "gone" }, 'step "gone": there is none'],
  ])("[LOG2] %s of what is not there is told, and nothing more is done", (_, change, problem) => {
    expect(refusal(FILE, change, { drop: "a" })).toEqual([0, problem]);
  });

  const walk = frozen(
    JSON.parse(readFileSync("procedures/osier-ranging-head.procedure.json", "utf8")) as ProcedureFile,
  );
  const ids = walk.tasks.flatMap(({ steps }) => steps.map(({ id }) => id));
  const oneOf = fc.constantFrom(...ids);
  const ofWalk: fc.Arbitrary<Change> = fc.oneof(
    oneOf.map((drop) => ({ drop })),
    fc.tuple(oneOf, oneOf).map(([move, behind]) => ({ move, behind })),
    fc.tuple(oneOf, fc.integer({ min: 0, max: 90 })).map(([id, minutes]) => ({
      change: id,
      set: { time: `PT${minutes}M` },
    })),
    oneOf.map((behind) => ({ add: step("fresh", "ev1", 1), behind })),
    fc
      .tuple(fc.constantFrom("none", ...(walk.contingencies ?? []).map(({ id }) => id)), oneOf)
      .map(([bring, behind]) => ({ bring, behind })),
  );

  test.prop([fc.array(ofWalk, { minLength: 1, maxLength: 4 })], { numRuns: 30 })(
    "[LOG2] of a whole walk parses or has findings, never throws, and leaves the file alone",
    (changes) => {
      const { file, problem } = applyChanges(walk, changes);
      expect(file === null).toBe(problem !== null);
      if (!file) return;
      const { procedure, findings } = parseProcedure(file);
      if (!procedure) expect(findings.some(({ level }) => level === "error")).toBe(true);
    },
  );

  it("[LOG2] [CHG1] any one step of a whole walk may be dropped: only what hangs on its decision is told", () => {
    for (const id of ids) {
      const { procedure, findings } = parseProcedure(changedIn(walk, { drop: id }));
      const errors = findings.filter(({ level }) => level === "error");
      expect(procedure === null).toBe(errors.length > 0);
      if (errors.length > 0) expect([id, find(walk, id)?.decide !== undefined]).toEqual([id, true]);
    }
  }, 20_000);
});

/** A procedure with something in every list. */
const WHOLE = frozen(
  fileWith(
    [
      task("one", [
        step("a", "ev1", 1, { at: "hatch", within: ["day"] }),
        step("b", ["ev1", "ev2"], 2, { after: ["a"] }),
      ]),
      task("two", [
        step("c", "ev2", 1, {
          to: "boom",
          anchor: "boom",
          moves: [{ item: "bag", to: { place: "boom" } }],
          confirm: { by: "ev1", text: "Seen" },
        }),
      ]),
    ],
    {
      places: [{ id: "hatch" }, { id: "boom" }],
      routes: [{ between: ["hatch", "boom"], length: 4 }],
      items: [
        { id: "bag", start: { crew: "ev1" }, end: { place: "hatch" } },
        { id: "lamp", start: { item: "bag" } },
      ],
      windows: [{ id: "day", kind: "daylight" }],
      supplies: [
        { crew: "ev1", id: "oxygen", unit: "kPa", full: 9, redline: 1, perHour: 1 },
        { crew: "ev2", id: "oxygen", unit: "kPa", full: 9, redline: 1, perHour: 1 },
        { crew: "ev2", id: "power", unit: "W.h", full: 9, redline: 1, perHour: 1 },
      ],
      watches: [
        { id: "gloves", by: ["ev1", "ev2"], do: "Check gloves", from: "a", until: "c", every: "PT30M" },
      ],
      contingencies: [
        {
          id: "tear",
          title: "A tear",
          tasks: [task("aid", [step("p", "ev1", 5), step("q", "ev2", 5, { after: ["p"] })])],
        },
      ],
    },
  ),
);
const errorsIn = (file: ProcedureFile) =>
  parseProcedure(file).findings.filter(({ level }) => level === "error");

describe("changes to the lists of a procedure", () => {
  it("[CHG1] are made to a procedure that parses", () => expect(errorsIn(WHOLE)).toEqual([]));

  it.each<readonly [string, Change, (file: ProcedureFile) => unknown, unknown]>([
    [
      "crew",
      { change: "iv", list: "crew", set: { call: "IV1" } },
      ({ crew }) => crew[2],
      { id: "iv", call: "IV1", station: "inside" },
    ],
    [
      "places",
      { add: { id: "mast" }, list: "places", behind: "hatch" },
      ({ places }) => places?.map(({ id }) => id),
      ["hatch", "mast", "boom"],
    ],
    [
      "places, first",
      { move: "boom", list: "places", first: true },
      ({ places }) => places?.map(({ id }) => id),
      ["boom", "hatch"],
    ],
    [
      "routes by both places",
      { change: "hatch boom", list: "routes", set: { length: 5 } },
      ({ routes }) => routes,
      [{ between: ["hatch", "boom"], length: 5 }],
    ],
    ["routes, either way", { drop: "boom hatch", list: "routes" }, ({ routes }) => routes, []],
    [
      "routes, turned round",
      { change: "hatch boom", list: "routes", set: { between: ["boom", "hatch"] } },
      ({ routes }) => routes,
      [{ between: ["boom", "hatch"], length: 4 }],
    ],
    [
      "items",
      { change: "bag", list: "items", set: { label: "Bag" }, unset: ["end"] },
      ({ items }) => items?.[0],
      { id: "bag", label: "Bag", start: { crew: "ev1" } },
    ],
    ["windows", { drop: "day", list: "windows" }, ({ windows }) => windows, []],
    [
      "supplies by crew member and id",
      { change: "ev2 oxygen", list: "supplies", set: { full: 8 } },
      ({ supplies }) => supplies?.map(({ full }) => full),
      [9, 8, 9],
    ],
    [
      "supplies by the id alone, where one has it",
      { drop: "power", list: "supplies" },
      ({ supplies }) => supplies?.map(({ id }) => id),
      ["oxygen", "oxygen"],
    ],
    [
      "watches",
      { change: "gloves", list: "watches", unset: ["until"] },
      ({ watches }) => watches?.[0]?.until,
      undefined,
    ],
    [
      "contingencies",
      { change: "tear", list: "contingencies", set: { title: "Torn" } },
      ({ contingencies }) => contingencies?.[0]?.title,
      "Torn",
    ],
    [
      "tasks",
      { change: "two", list: "tasks", set: { priority: "get-ahead" } },
      ({ tasks }) => tasks[1]?.priority,
      "get-ahead",
    ],
    [
      "tasks, first in a contingency",
      { move: "two", list: "tasks", first: "tear" },
      ({ contingencies }) => contingencies?.[0]?.tasks.map(({ id }) => id),
      ["two", "aid"],
    ],
    [
      "tasks of a contingency, first in the plan",
      { move: "aid", list: "tasks", first: true },
      order,
      ["p q", "a b", "c"],
    ],
    ["steps, first in a task", { move: "c", first: "one" }, order, ["c a b", ""]],
    [
      "steps of a contingency",
      { change: "q", set: { time: "PT9M" } },
      ({ contingencies }) => contingencies?.[0]?.tasks[0]?.steps[1]?.time,
      "PT9M",
    ],
    [
      "steps behind one of a contingency",
      { move: "b", behind: "p" },
      ({ contingencies }) => contingencies?.[0]?.tasks[0]?.steps.map(({ id }) => id),
      ["p", "b", "q"],
    ],
    [
      "the head",
      { head: { revision: "B", limits: { elapsed: "PT1H" } } },
      ({ revision, limits }) => [revision, limits],
      ["B", { elapsed: "PT1H" }],
    ],
    ["the head, removed", { head: {}, unset: ["windows"] }, (file) => Object.hasOwn(file, "windows"), false],
  ])("[CHG1] %s", (_, change, seen, expected) => {
    expect(seen(changedIn(WHOLE, change))).toEqual(expected);
  });

  it("[CHG1] [PRO11] a key of format 2 makes a file of format 1 one of format 2, and nothing else does", () => {
    const picture = { id: "p1", type: "image/png", data: "iVBORw0KGgo=" };
    const file = changedIn(WHOLE, { add: picture, list: "pictures", first: true });
    expect(file).toMatchObject({ format: "tetherline.procedure/2", pictures: [picture] });
    expect(errorsIn(file)).toEqual([]);
    expect(changedIn(WHOLE, { change: "a", set: { check: ["Clamp 1"] } }).format).toBe(FORMAT);
    expect(changedIn(WHOLE, { change: "a", set: { do: "Else" } }).format).toBe(FORMATS[0]);
    expect(changedIn(file, { drop: "p1", list: "pictures" }).format).toBe(FORMAT);
  });

  it("[CHG1] a crew member is renamed in what several hold, who else could do a step, and the values of states", () => {
    const file = fileWith(
      [
        step("a", "ev1", 1, {
          or: [["ev2"], { by: ["ev2", "iv"] }],
          moves: [{ item: "bar", to: { crews: ["ev1", "ev2"] } }],
          needs: { rest: "ev2", door: "ev2" },
          sets: { rest: "free" },
        }),
      ],
      {
        format: FORMAT,
        items: [{ id: "bar", start: { crews: ["ev2", "iv"] } }],
        states: [
          { id: "rest", values: "crew", start: "ev2" },
          { id: "door", values: ["ev2", "shut"], start: "shut" },
        ],
      },
    );
    const renamed = changedIn(file, { rename: "ev2", list: "crew", to: "two" });
    expect(parseProcedure(renamed).findings).toEqual([]);
    expect(renamed.items?.[0]?.start).toEqual({ crews: ["two", "iv"] });
    expect(renamed.states?.map(({ start }) => start)).toEqual(["two", "shut"]);
    expect(find(renamed, "a")).toMatchObject({
      or: [["two"], { by: ["two", "iv"] }],
      moves: [{ item: "bar", to: { crews: ["ev1", "two"] } }],
      needs: { rest: "two", door: "ev2" },
    });
    const other = changedIn(file, { rename: "rest", list: "states", to: "seat" });
    expect(parseProcedure(other).findings).toEqual([]);
    expect(find(other, "a")).toMatchObject({ needs: { seat: "ev2", door: "ev2" }, sets: { seat: "free" } });
  });

  it("[CHG1] drop: a watch lets go of a step it names, a whole task is let go of, anything else is left dangling", () => {
    expect(changedIn(WHOLE, { drop: "a" }).watches?.[0]).toEqual({
      id: "gloves",
      by: ["ev1", "ev2"],
      do: "Check gloves",
      until: "c",
      every: "PT30M",
    });
    const without = changedIn(WHOLE, { drop: "one", list: "tasks" });
    expect([order(without), errorsIn(without)]).toEqual([["c"], []]);
    const dangling = changedIn(WHOLE, { drop: "boom", list: "places" });
    expect(errorsIn(dangling).map(({ code, things }) => [code, things])).toContainEqual([
      "file/no-such-reference",
      ["boom"],
    ]);
  });

  it.each<readonly [string, Change]>([
    ["crew", { rename: "ev1", list: "crew", to: "lead" }],
    ["places", { rename: "boom", list: "places", to: "mast" }],
    ["items", { rename: "bag", list: "items", to: "sack" }],
    ["windows", { rename: "day", list: "windows", to: "light" }],
    ["steps", { rename: "a", to: "start" }],
    ["steps of a contingency", { rename: "p", to: "patch" }],
    ["tasks", { rename: "one", list: "tasks", to: "first" }],
    ["watches", { rename: "gloves", list: "watches", to: "hands" }],
    ["contingencies", { rename: "tear", list: "contingencies", to: "torn" }],
    ["supplies", { rename: "ev1 oxygen", list: "supplies", to: "air" }],
    ["supplies of another", { rename: "ev1 oxygen", list: "supplies", to: "iv oxygen" }],
  ])("[CHG1] rename in %s reaches everything that names it", (_, change) => {
    const { rename, to } = change as { rename: string; to: string };
    const file = changedIn(WHOLE, change);
    expect(errorsIn(file)).toEqual([]);
    const [from, into] = [rename, to].map((id) => id.split(" ").at(-1));
    // Nothing in the file is called so otherwise, but for the other supply of that id.
    const text = JSON.stringify(WHOLE).replaceAll(`"${from}"`, `"${into}"`);
    if ("list" in change && change.list === "supplies") expect(file.supplies?.[0]?.id).toBe(into);
    else expect(JSON.stringify(file)).toBe(text);
  });

  it("[CHG1] [OFF7] a supply is renamed in the records that are bound to it, and in no other's", () => {
    const bound = (id: string, by: readonly string[]) =>
      step(id, by, 1, { records: [{ id: "r", label: "Gauge", unit: "kPa", supply: "oxygen" }] });
    const oxygen = { id: "oxygen", unit: "kPa", full: 6000, redline: 1000, perHour: 500 };
    const file: ProcedureFile = {
      ...fileWith([bound("own", ["ev1"]), bound("other", ["ev2"]), bound("both", ["iv", "ev1", "ev2"])], {
        supplies: [
          { ...oxygen, crew: "ev1" },
          { ...oxygen, crew: "ev2" },
        ],
        contingencies: [{ id: "leak", title: "Leak", tasks: [task("stop", [bound("read", ["ev1"])])] }],
      }),
      format: "tetherline.procedure/2",
    };
    const suppliesOf = (changed: ProcedureFile) =>
      [...changed.tasks, ...(changed.contingencies ?? []).flatMap(({ tasks }) => tasks)].flatMap(
        ({ steps }) => steps.map(({ records }) => records?.[0]?.supply),
      );
    const renamed = changedIn(file, { rename: "ev1 oxygen", list: "supplies", to: "air" });
    expect(suppliesOf(renamed)).toEqual(["air", "oxygen", "air", "air"]);
    expect(renamed.supplies?.map(({ id }) => id)).toEqual(["air", "oxygen"]);
    const others = changedIn(file, { rename: "ev2 oxygen", list: "supplies", to: "ev2 air" });
    expect(suppliesOf(others)).toEqual(["oxygen", "air", "oxygen", "oxygen"]);
  });

  it("[CHG1] rename of a route gives it other places", () => {
    const file = changedIn(
      WHOLE,
      { add: { id: "mast" }, list: "places", first: true },
      { rename: "boom hatch", list: "routes", to: "hatch mast" },
    );
    expect(file.routes).toEqual([{ between: ["hatch", "mast"], length: 4 }]);
  });

  it.each<readonly [string, Change, string]>([
    ["an id that another has", { add: step("p", "ev1", 1), behind: "a" }, 'step "p": there is one already'],
    [
      "a task with such a step",
      { add: { ...task("new", [step("a", "ev1", 1)]) }, list: "tasks", first: true },
      'step "a": there is one already',
    ],
    [
      "a task with one step twice",
      { add: { ...task("new", [step("z", "ev1", 1), step("z", "ev1", 1)]) }, list: "tasks", first: true },
      'step "z": there is one already',
    ],
    ["no id", { add: { do: "It" }, behind: "a" }, "step: an id is needed"],
    ["a task that is not there", { add: step("z", "ev1", 1), first: "three" }, 'task "three": there is none'],
    [
      "a contingency that is not there",
      { move: "two", list: "tasks", first: "fire" },
      'contingency "fire": there is none',
    ],
    [
      "a step that is first, but in what",
      { move: "a", first: true },
      "it must be said in which task the step is first",
    ],
    [
      "a place first in something",
      { move: "boom", list: "places", first: "hatch" },
      "place: first is said with true, since there is one list of them only",
    ],
    ["nowhere", { move: "a" }, "step: it must be said what it stands behind, or that it is first"],
    ["a supply two have", { drop: "oxygen", list: "supplies" }, 'supply "oxygen": there is more than one'],
    ["a rename to a known id", { rename: "a", to: "q" }, 'step "q": there is one already'],
    [
      "a route to other places",
      { change: "hatch boom", list: "routes", set: { between: ["hatch", "hatch"] } },
      'route: "hatch boom" would be another one; only a rename does that',
    ],
    [
      "a supply of somebody else",
      { change: "ev1 oxygen", list: "supplies", set: { crew: "iv" } },
      'supply: "ev1 oxygen" would be another one; only a rename does that',
    ],
    [
      "steps that are there twice",
      { change: "two", list: "tasks", set: { steps: [step("a", "ev1", 1)] } },
      'step "a": there is one already',
    ],
    [
      "places that are there twice",
      { head: { places: [{ id: "x" }, { id: "x" }] } },
      'place "x": there is one already',
    ],
    ["a contingency behind its own step", { bring: "tear", behind: "p" }, 'step "p": there is none'],
  ])("[CHG2] refuses %s, in words", (_, change, words) => {
    expect(refusal(WHOLE, { head: { revision: "B" } }, change, { drop: "a" })).toEqual([1, words]);
  });

  test.prop([procedureFiles, fc.array(anyChange, { maxLength: 8 })], { numRuns: 200 })(
    "[CHG2] changes nothing in place, and stops at the first that cannot be applied",
    (file, changes) => {
      const text = JSON.stringify(file);
      const result = applyChanges(frozen(file), changes);
      expect(JSON.stringify(file)).toBe(text);
      if (!result.problem) return;
      expect(applyChanges(file, changes.slice(0, result.index)).problem).toBeNull();
      expect(applyChanges(file, changes.slice(0, result.index + 1)).problem).toEqual(result.problem);
    },
  );

  test.prop([procedureFiles, fc.array(anyChange, { minLength: 2, maxLength: 8 })], { numRuns: 300 })(
    "[CHG2] applies a list as it applies its changes one by one",
    (file, changes) => {
      const taken = changes.filter((_, index) => !applyChanges(file, changes.slice(0, index + 1)).problem);
      const whole = applyChanges(file, taken);
      const single = taken.reduce((current, change) => applyChanges(current, [change]).file ?? current, file);
      expect(whole.file).toEqual(single);
    },
  );
});
