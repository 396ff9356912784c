import { fc, test } from "@fast-check/vitest";
import type { Operation } from "fast-json-patch";
import jsonPatch from "fast-json-patch";
import { describe, expect, it } from "vitest";
import { applyChanges, patchBetween } from "../../../src/core/changes/index.ts";
import { anyChange, procedureFiles } from "../procedure-files.ts";

const patched = (before: unknown, after: unknown): unknown =>
  jsonPatch.applyPatch(
    structuredClone(before),
    structuredClone(patchBetween(before, after)) as Operation[],
    true,
  ).newDocument;

/** JSON as it travels: no key of JavaScript's own objects, no negative zero. */
const json = fc
  .jsonValue({ maxDepth: 4 })
  .map((value) => JSON.parse(JSON.stringify(value).replaceAll("__proto__", "proto")) as unknown)
  .filter((value) => typeof value === "object" && value !== null);

describe("the JSON Patch between two values", () => {
  test.prop([json, json], { numRuns: 300 })(
    "[CHK1] makes the one of the other, by a program that is not ours",
    (before, after) => {
      fc.pre(Array.isArray(before) === Array.isArray(after));
      expect(patched(before, after)).toEqual(after);
    },
  );

  test.prop([procedureFiles, fc.array(anyChange, { maxLength: 4 })], { numRuns: 200 })(
    "[CHK1] makes of a procedure what changes make of it",
    (file, changes) => {
      const after = changes.reduce(
        (current, change) => applyChanges(current, [change]).file ?? current,
        file,
      );
      expect(patched(file, after)).toEqual(after);
    },
  );

  it.each<readonly [string, unknown, unknown, unknown]>([
    ["nothing", { a: [1, { b: 2 }] }, { a: [1, { b: 2 }] }, []],
    ["one entry put in", [1, 2, 3], [1, 9, 2, 3], [{ op: "add", path: "/1", value: 9 }]],
    ["one entry put behind", [1, 2], [1, 2, 3], [{ op: "add", path: "/-", value: 3 }]],
    ["one entry taken out", ["a", "b", "c"], ["a", "c"], [{ op: "remove", path: "/1" }]],
    ["one of two alike taken out", ["a", "a"], ["a"], [{ op: "remove", path: "/1" }]],
    [
      "entries by id",
      [{ id: "a", x: 1 }, { id: "b" }],
      [{ id: "b" }, { id: "a", x: 2 }],
      [
        { op: "remove", path: "/1" },
        { op: "add", path: "/0", value: { id: "b" } },
        { op: "replace", path: "/1/x", value: 2 },
      ],
    ],
    [
      "a field of an entry",
      [{ id: "a" }, { id: "b", x: 1 }],
      [{ id: "a" }, { id: "b", x: 2 }],
      [{ op: "replace", path: "/1/x", value: 2 }],
    ],
    [
      "keys that need an escape",
      { "a/b": 1, "c~d": 2 },
      { "c~d": 3 },
      [
        { op: "remove", path: "/a~1b" },
        { op: "replace", path: "/c~0d", value: 3 },
      ],
    ],
  ])("[CHK1] says %s", (_, before, after, patch) => {
    expect(patchBetween(before, after)).toEqual(patch);
  });
});
