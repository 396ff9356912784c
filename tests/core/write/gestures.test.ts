import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf, procedureFileOf } from "../../../src/core/procedure/index.ts";
import type { Duration, StepId } from "../../../src/core/units/index.ts";
import type { FileStep, Proposal } from "../../../src/core/write/index.ts";
import {
  contingencyKey,
  handedOver,
  offersAt,
  performerTurned,
  placedStep,
  rowsCopied,
  rowsDropped,
  rowsDuplicated,
  rowsMoved,
  rowsShifted,
  rowsWith,
  sheetOf,
  stepAdded,
  stepLinked,
  stepSplit,
  stepsJoined,
  stepUnlinked,
  taskAdded,
  taskKey,
  textPasted,
  textReplaced,
} from "../../../src/core/write/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";
import { procedureFiles } from "../procedure-files.ts";

const FILE = fileWith(
  [
    task("one", [
      step("a", "ev1", 1, { at: "hatch" }),
      step("b", "ev1", 2, { at: "hatch", after: ["a"] }),
      step("c", "ev1", 3, { at: "hatch", after: [{ step: "b", lag: "PT1M" }] }),
    ]),
    task("two", [step("d", "ev2", 4, { after: ["b", "c"] })]),
  ],
  {
    places: [{ id: "hatch" }, { id: "boom" }, { id: "far" }],
    routes: [{ between: ["hatch", "boom"], length: 4, time: "PT1M" }],
    items: [
      { id: "bag", start: { crew: "ev1" } },
      { id: "lamp", label: "Lamp", start: { item: "bag" } },
      { id: "cap", start: { place: "boom" } },
    ],
    contingencies: [{ id: "tear", title: "A tear", tasks: [task("aid", [step("patch", "ev1", 5)])] }],
    watches: [{ id: "gloves", by: ["ev1"], do: "Look", until: "b", every: "PT30M" }],
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
      { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
      { id: "iv", call: "IV", station: "inside" },
    ],
  } as Partial<ProcedureFile>,
);

function afterwards(file: ProcedureFile, proposal: Proposal): ProcedureFile {
  if (proposal.problem) throw new Error(inWords(proposal.problem));
  const applied = applyChanges(file, proposal.changes);
  if (applied.problem) throw new Error(applied.problem.code);
  expect(procedureFileOf(applied.file)).not.toBeNull();
  return applied.file;
}
const done = (proposal: Proposal) => afterwards(FILE, proposal);
const why = ({ problem }: Proposal) => (problem ? inWords(problem) : null);
const order = ({ tasks }: ProcedureFile) => tasks.map(({ steps }) => steps.map(({ id }) => id).join(" "));
const at = (file: ProcedureFile, id: string): FileStep | null => placedStep(file, id)?.step ?? null;
const ONE = taskKey("one");

describe("rows of the table", () => {
  it("[WRT2] stand in reading order with their numbers, contingencies last", () => {
    const rows = sheetOf(FILE).map((row) => `${row.key}${"number" in row ? ` ${row.number}` : ""}`);
    expect(rows).toEqual([
      "task:one 1",
      "a 1.1",
      "b 1.2",
      "c 1.3",
      "task:two 2",
      "d 2.1",
      "contingency:tear",
      "task:aid C1.1",
      "patch C1.1.1",
    ]);
  });

  it("[WRT2] a new step takes over who, where and task of its neighbour", () => {
    const proposal = stepAdded(FILE, "b", "Stow the lamp");
    expect(proposal.rows).toEqual(["stow-the-lamp"]);
    const file = done(proposal);
    expect(order(file)).toEqual(["a b stow-the-lamp c", "d"]);
    expect(at(file, "stow-the-lamp")).toMatchObject({ by: ["ev1"], at: "hatch", do: "Stow the lamp" });
    const ids = [1, 2].map(() => stepAdded(file, ONE, "Stow the lamp").rows?.[0]);
    expect(ids).toEqual(["stow-the-lamp-2", "stow-the-lamp-2"]);
  });

  it("[WRT2] the first step of a procedure is done by the first one outside; without a row nothing is added", () => {
    const empty: ProcedureFile = { ...FILE, tasks: [{ id: "one", title: "One", steps: [] }] };
    expect(at(afterwards(empty, stepAdded(empty, ONE, "Go")), "go")).toMatchObject({ by: ["ev1"] });
    expect(why(stepAdded(FILE, "gone", "Go"))).toBe("Choose a task or a step first.");
  });

  it("[WRT2] a new task stands behind that of the row, in a contingency too", () => {
    expect(done(taskAdded(FILE, "b", "Rest")).tasks.map(({ id }) => id)).toEqual(["one", "rest", "two"]);
    const file = done(taskAdded(FILE, "patch", "Rest"));
    expect(file.contingencies?.[0]?.tasks.map(({ id }) => id)).toEqual(["aid", "rest"]);
  });

  it("[WRT2] are taken out; what is selected then is the row before them; a task stays", () => {
    const proposal = rowsDropped(FILE, ["b", "c"]);
    expect(proposal.rows).toEqual(["a"]);
    expect(order(done(proposal))).toEqual(["a", "d"]);
    expect(at(done(proposal), "d")?.after).toEqual([]);
    expect(why(rowsDropped(FILE, [ONE, taskKey("two")]))).toBe("A procedure needs at least one task.");
    expect(why(rowsDropped(FILE, []))).toBe("Choose a step first.");
  });

  it("[WRT2] are duplicated with ids that are free, and wait for one another as before", () => {
    const file = done(rowsDuplicated(FILE, ["b", "c"]));
    expect(order(file)).toEqual(["a b c b-2 c-2", "d"]);
    expect(at(file, "c-2")?.after).toEqual([{ step: "b-2", lag: "PT1M" }]);
    expect(order(done(rowsDuplicated(FILE, [taskKey("two")])))).toEqual(["a b c", "d", "d-2"]);
  });

  it("[WRT2] move up and down, over the edge of a task too, and say where there is no further", () => {
    expect(order(done(rowsShifted(FILE, ["b", "c"], "up")))).toEqual(["b c a", "d"]);
    expect(order(done(rowsShifted(FILE, ["c"], "down")))).toEqual(["a b", "c d"]);
    expect(order(done(rowsShifted(FILE, ["d"], "up")))).toEqual(["a b c d", ""]);
    expect(order(done(rowsShifted(FILE, ["a"], "down")))).toEqual(["b a c", "d"]);
    expect(order(done(rowsShifted(FILE, [taskKey("two")], "up")))).toEqual(["d", "a b c"]);
    expect(order(done(rowsShifted(FILE, [ONE], "down")))).toEqual(["d", "a b c"]);
    expect(why(rowsShifted(FILE, ["a"], "up"))).toBe("It is first already.");
    expect(why(rowsShifted(FILE, [ONE], "up"))).toBe("It is first already.");
    expect(why(rowsShifted(FILE, ["patch"], "down"))).toBe("It is last already.");
    expect(why(rowsShifted(FILE, [taskKey("aid")], "down"))).toBe("It is last already.");
    expect(why(rowsShifted(FILE, [ONE, "d"], "up"))).toMatch(/^Choose either/);
  });

  it("[WRT2] move to another row in the order of reading", () => {
    expect(order(done(rowsMoved(FILE, ["c", "a"], "d")))).toEqual(["b", "d a c"]);
    expect(order(done(rowsMoved(FILE, ["d"], ONE)))).toEqual(["d a b c", ""]);
    expect(order(done(rowsMoved(FILE, [ONE], "d")))).toEqual(["d", "a b c"]);
    expect(why(rowsMoved(FILE, ["a"], "a"))).toMatch(/beside themselves/);
    expect(why(rowsMoved(FILE, [ONE], "a"))).toMatch(/beside themselves/);
    expect(why(rowsMoved(FILE, ["a"], "gone"))).toBe("Choose a task or a step first.");
  });

  it("[WRT2] move to the beginning of everything, and of a contingency", () => {
    const aid = contingencyKey("tear");
    expect(order(done(rowsMoved(FILE, ["d", "c"], null)))).toEqual(["c d a b", ""]);
    expect(order(done(rowsMoved(FILE, [taskKey("two")], null)))).toEqual(["d", "a b c"]);
    expect(order(done(rowsMoved(FILE, [ONE, taskKey("two")], null)))).toEqual(["a b c", "d"]);
    const tear = (file: ProcedureFile) => order({ ...file, tasks: file.contingencies?.[0]?.tasks ?? [] });
    expect(tear(done(rowsMoved(FILE, ["d"], aid)))).toEqual(["d patch"]);
    expect(tear(done(rowsMoved(FILE, [taskKey("two")], aid)))).toEqual(["d", "patch"]);
    expect(why(rowsMoved(FILE, [ONE, taskKey("two")], aid))).toBe("A procedure needs at least one task.");
    const empty = { ...FILE, contingencies: [{ id: "tear", title: "A tear", tasks: [] }] };
    expect(why(rowsMoved(empty, ["a"], aid))).toBe("Choose a task or a step first.");
  });

  it("[WRT2] are copied as JSON and pasted into another procedure", () => {
    const text = rowsCopied(FILE, ["b", "c"]);
    expect(JSON.parse(text)).toEqual([at(FILE, "b"), at(FILE, "c")]);
    const other = fileWith([step("b", "iv", 1)]);
    const pasted = afterwards(other, textPasted(other, "b", text));
    expect(order(pasted)).toEqual(["b b-2 c"]);
    expect(at(pasted, "c")?.after).toEqual([{ step: "b-2", lag: "PT1M" }]);
    const whole = afterwards(other, textPasted(other, "b", rowsCopied(FILE, [ONE])));
    expect(order(whole)).toEqual(["b", "a b-2 c"]);
    expect(rowsCopied(FILE, [])).toBe("");
  });

  it.each(["no JSON", "[]", "7", '[{"id": "x"}]', '{"id": "x", "steps": [1]}'])(
    "[WRT2] %s holds nothing to paste",
    (text) => expect(why(textPasted(FILE, "b", text))).toBe("What was pasted holds no steps and no tasks."),
  );

  it("[WRT2] a split step's second half has what holds at its end, and what came after it comes after that", () => {
    const whole = { ...FILE, tasks: [{ ...FILE.tasks[0] }, FILE.tasks[1]] } as ProcedureFile;
    const file = afterwards(whole, stepSplit(whole, "b", ["Loosen", "Take off"]));
    expect(order(file)).toEqual(["a b take-off c", "d"]);
    expect(at(file, "b")).toMatchObject({ do: "Loosen", time: "PT1M", after: ["a"] });
    expect(at(file, "take-off")).toMatchObject({ do: "Take off", time: "PT1M", by: ["ev1"], at: "hatch" });
    expect(at(file, "c")?.after).toEqual([{ step: "take-off", lag: "PT1M" }]);
    expect(at(file, "d")?.after).toEqual(["take-off", "c"]);
    expect(file.watches?.[0]?.until).toBe("take-off");
  });

  it("[WRT2] the halves of a time are together what it was", () => {
    const timed = (time: FileStep["time"]) => fileWith([step("x", "ev1", 1, { time, confirm: undefined })]);
    const odd = timed({ low: "PT1S", likely: "PT3S", high: "PT2M1S" });
    const file = afterwards(odd, stepSplit(odd, "x", ["One", "Two"]));
    expect(at(file, "x")?.time).toEqual({ low: "PT1S", likely: "PT2S", high: "PT1M1S" });
    expect(at(file, "two")?.time).toEqual({ low: "PT0S", likely: "PT1S", high: "PT1M" });
  });

  it("[WRT2] joined steps are one with all that they had", () => {
    const file = done(stepsJoined(FILE, ["a", "b", "c"]));
    expect(order(file)).toEqual(["a", "d"]);
    expect(at(file, "a")).toMatchObject({ do: "Do a; Do b; Do c", time: "PT6M", at: "hatch" });
    expect(at(file, "a")?.after).toBeUndefined();
    expect(at(file, "d")?.after).toEqual(["a"]);
    expect(file.watches?.[0]?.until).toBe("a");
  });

  it("[WRT2] says which steps cannot be joined, and why", () => {
    expect(why(stepsJoined(FILE, ["a"]))).toMatch(/two steps or more/);
    expect(why(stepsJoined(FILE, ["a", "c"]))).toMatch(/follow each other/);
    const others = fileWith([step("x", "ev1", 1), step("y", "ev2", 1)]);
    expect(why(stepsJoined(others, ["x", "y"]))).toMatch(/same people/);
    const confirm = { by: "iv", text: "Seen" };
    const confirmed = fileWith([step("x", "ev1", 1, { confirm }), step("y", "ev1", 1, { confirm })]);
    expect(why(stepsJoined(confirmed, ["x", "y"]))).toMatch(/More than one/);
  });
});

describe("search and replace", () => {
  it("[WRT2] finds and changes texts for people, never ids", () => {
    expect(rowsWith(FILE, { text: "do b", isExact: false })).toEqual(["b"]);
    expect(rowsWith(FILE, { text: "do b", isExact: true })).toEqual([]);
    expect(rowsWith(FILE, { text: "", isExact: false })).toEqual([]);
    const file = done(textReplaced(FILE, { text: "Do", isExact: true }, "Check $&"));
    expect(at(file, "b")?.do).toBe("Check $& b");
    expect(at(file, "patch")?.do).toBe("Check $& patch");
    expect(order(file)).toEqual(order(FILE));
    const some = done(textReplaced(FILE, { text: "Do", isExact: true }, "Check", new Set(["b"])));
    expect([at(some, "a")?.do, at(some, "b")?.do]).toEqual(["Do a", "Check b"]);
    expect(why(textReplaced(FILE, { text: "(", isExact: true }, ""))).toBe("“(” is in no text of the rows.");
    expect(why(textReplaced(FILE, { text: "", isExact: true }, ""))).toMatch(/^Type/);
  });
});

describe("links, people and hand-overs", () => {
  it("[WRT3] a step comes after another, with a lag, once only", () => {
    const linked = done(stepLinked(FILE, "d", "a", 90_000 as Duration));
    expect(at(linked, "d")?.after).toEqual(["b", "c", { step: "a", lag: "PT1M30S" }]);
    expect(at(done(stepLinked(FILE, "d", "b", 60_000 as Duration)), "d")?.after).toEqual([
      "c",
      { step: "b", lag: "PT1M" },
    ]);
    expect(at(done(stepUnlinked(FILE, "d", "b")), "d")?.after).toEqual(["c"]);
    expect(at(done(stepUnlinked(FILE, "b", "a")), "b")).not.toHaveProperty("after");
  });

  it("[WRT3] a link that would make everybody wait is refused, and says so", () => {
    expect(why(stepLinked(FILE, "a", "d"))).toBe(
      "“Do a” cannot come after “Do d”: with that, they would wait for each other, and nobody could go on.",
    );
    expect(why(stepLinked(FILE, "a", "a"))).toBe("A step cannot come after itself.");
    expect(why(stepLinked(FILE, "a", "gone"))).toMatch(/^Choose/);
  });

  it("[WRT3] crew members join a step and leave it; somebody must do it", () => {
    expect(at(done(performerTurned(FILE, "a", "ev2")), "a")?.by).toEqual(["ev1", "ev2"]);
    expect(why(performerTurned(FILE, "a", "ev1"))).toMatch(/^Somebody must do/);
  });

  const timeline = planOf(outlineOf(procedureOf(FILE))).timeline;
  const offers = (id: string) => (timeline ? offersAt(timeline, id as StepId) : null);

  it("[WRT3] offers what somebody holds when the step begins, and the places that can be reached then", () => {
    expect(offers("b")?.[0]).toEqual({
      crew: "ev1",
      place: "hatch",
      holds: ["bag", "lamp"],
      beside: [],
      reaches: ["hatch", "boom"],
    });
    expect(offers("b")?.[2]?.reaches).toEqual(["hatch", "boom", "far"]);
    expect(offers("patch")).toBeNull();
  });

  it("[WRT3] a hand-over is a joint step with its move; what is not held is refused", () => {
    const hand = { item: "lamp", giver: "ev1", receiver: "ev2", action: "Hand over the lamp", behind: "b" };
    const file = done(handedOver(FILE, hand, offers("b")));
    expect(at(file, "hand-over-the-lamp")).toEqual({
      id: "hand-over-the-lamp",
      by: ["ev1", "ev2"],
      do: "Hand over the lamp",
      time: "PT1M",
      at: "hatch",
      moves: [{ item: "lamp", to: { crew: "ev2" } }],
    });
    expect(why(handedOver(FILE, { ...hand, item: "cap" }, offers("b")))).toBe(
      "EV1 does not hold cap at that moment of the plan.",
    );
    expect(why(handedOver(FILE, { ...hand, giver: "ev2" }, offers("b")))).toMatch(/two people/);
    expect(handedOver(FILE, { ...hand, item: "cap" }, null).problem).toBeNull();
  });
});

/** Every gesture on rows, by number. */
function anyProposal(file: ProcedureFile, kind: number, rows: readonly string[], to: string): Proposal {
  const [first = ""] = rows;
  switch (kind) {
    case 0:
      return stepAdded(file, to, "Look at it");
    case 1:
      return taskAdded(file, to, "Another");
    case 2:
      return rowsDropped(file, rows);
    case 3:
      return rowsDuplicated(file, rows);
    case 4:
      return rowsMoved(file, rows, to);
    case 5:
      return rowsShifted(file, rows, "up");
    case 6:
      return rowsShifted(file, rows, "down");
    case 7:
      return stepSplit(file, first, ["One", "Two"]);
    case 8:
      return stepsJoined(file, rows);
    case 9:
      return textPasted(file, to, rowsCopied(file, rows));
    case 10:
      return textReplaced(file, { text: "it", isExact: false }, "that");
    case 11:
      return stepLinked(file, first, to);
    default:
      return performerTurned(file, first, file.crew[0]?.id ?? "");
  }
}

describe("any gesture", () => {
  test.prop([
    procedureFiles,
    fc.array(fc.tuple(fc.nat(12), fc.nat(), fc.nat(), fc.nat(3)), { maxLength: 8 }),
  ])(
    "[WRT1] [WRT2] is refused with a reason, or can be applied and leaves the shape of a procedure",
    (file, gestures) => {
      let current = file;
      for (const [kind, from, to, count] of gestures) {
        const keys = sheetOf(current).map(({ key }) => key);
        const start = from % keys.length;
        const rows = keys.slice(start, start + 1 + count);
        const proposal = anyProposal(current, kind, rows, keys[to % keys.length] ?? "");
        if (proposal.problem) expect(inWords(proposal.problem)).toMatch(/[.]$/);
        else current = afterwards(current, proposal);
      }
    },
  );
});
