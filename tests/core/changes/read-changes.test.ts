import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  changeMessage,
  changesBetween,
  readChanges,
  unreadableChangesMessage,
} from "../../../src/core/changes/index.ts";
import type { Change } from "../../../src/core/procedure/index.ts";
import { changeSchema } from "../../../src/core/procedure/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { anyChange, procedureFiles } from "../procedure-files.ts";

const throughJson = (value: unknown) => JSON.parse(JSON.stringify(value)) as unknown;

describe("reading changes", () => {
  test.prop([procedureFiles, procedureFiles, fc.array(anyChange)], { numRuns: 100 })(
    "[CHG1] [CHG3] what is found between two procedures is read again as it was written",
    (before, after, others) => {
      const changes = [...changesBetween(before, after), ...others];
      expect(readChanges(throughJson(changes))).toEqual({ changes, problem: null });
      expect(readChanges(throughJson({ changes, effect: {} })).changes).toEqual(changes);
      for (const change of changes) expect(changeSchema.safeParse(throughJson(change)).data).toEqual(change);
    },
  );

  it("[CHG1] takes the two parts of an id as a list too", () => {
    expect(readChanges([{ drop: ["hatch", "boom"], list: "routes" }]).changes).toEqual([
      { drop: "hatch boom", list: "routes" },
    ]);
  });

  it.each<readonly [unknown, string]>([
    ["none", 'it is neither a list of changes nor an object with "changes"'],
    [{ drop: "a" }, 'it is neither a list of changes nor an object with "changes"'],
    [[{ drop: "a" }, {}], "change 2 says none of add, drop, move, change, rename, bring and head"],
    [[null], "change 1 says none of add, drop, move, change, rename, bring and head"],
    [[{ drop: "a", move: "b" }], "change 1 says both drop and move"],
    [[{ drop: "a", liste: "tasks" }], 'change 1 (drop) has the key "liste", which is not known there'],
    [[{ drop: "a", list: "task" }], 'change 1 (drop) has no usable "list"'],
    [[{ drop: 4 }], 'change 1 (drop) has no usable "drop"'],
    [[{ rename: "a" }], 'change 1 (rename) has no usable "to"'],
    [[{ change: "a", set: [] }], 'change 1 (change) has no usable "set"'],
    [[{ move: "a" }], 'change 1 (move) must have either "behind" or "first"'],
    [[{ move: "a", behind: "b", first: true }], 'change 1 (move) must have either "behind" or "first"'],
  ])("[CHG1] %j is refused in words", (value, words) => {
    const { problem } = readChanges(value);
    expect(problem && inWords(unreadableChangesMessage(problem))).toBe(words);
  });

  test.prop([fc.jsonValue()])("[CHG1] never throws", (value) => {
    const { changes, problem } = readChanges(value);
    expect((changes === null) !== (problem === null)).toBe(true);
  });
});

describe("a change in words", () => {
  it.each<readonly [Change, string]>([
    [
      { change: "a", set: { time: "PT5M", at: "hatch" }, unset: ["after"] },
      'step a: time PT3M → PT5M; at – → hatch; after ["b"] → –',
    ],
    [{ add: { id: "x", do: "Turn it" }, behind: "a" }, "step x: added behind a; Turn it"],
    [{ add: { id: "t", title: "New", steps: [] }, list: "tasks", first: true }, "task t: added first; New"],
    [{ add: { id: "mast" }, list: "places", behind: "hatch" }, "place mast: added behind hatch"],
    [{ move: "a", first: "t2" }, "step a: moved to be first in task t2"],
    [{ move: "t2", list: "tasks", first: "tear" }, "task t2: moved to be first in contingency tear"],
    [{ drop: "hatch boom", list: "routes" }, "route hatch boom: dropped"],
    [{ rename: "a", to: "b" }, "step a: renamed to b"],
    [{ bring: "tear", behind: "a" }, "contingency tear: brought in behind a"],
    [{ head: { title: "Other" }, unset: ["revision"] }, "head: title – → Other; revision – → –"],
  ])("[CHG7] %j", (change, words) => {
    expect(inWords(changeMessage(change, { time: "PT3M", after: ["b"] }))).toBe(words);
  });
});
