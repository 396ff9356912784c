import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { procedureFileOf } from "../../../src/core/procedure/index.ts";
import { anyChange, procedureFiles } from "../procedure-files.ts";

type Path = readonly (string | number)[];

/** The ways to all parts of a JSON value. */
function pathsIn(value: unknown, path: Path = []): Path[] {
  if (typeof value !== "object" || value === null) return [path];
  const inner = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return [path, ...inner.flatMap(([key, one]) => pathsIn(one, [...path, key]))];
}

/** A value with the part at a path replaced, or taken out with `undefined`; the rest is shared. */
function damaged(value: unknown, [key, ...rest]: Path, part: unknown): unknown {
  if (key === undefined) return part;
  const inner = damaged((value as Record<string | number, unknown>)[key], rest, part);
  if (Array.isArray(value))
    return inner === undefined ? value.toSpliced(Number(key), 1) : value.with(Number(key), inner);
  const { [key]: _, ...others } = value as Record<string | number, unknown>;
  return inner === undefined ? others : { ...others, [key]: inner };
}

const parts = fc.constantFrom<unknown>(
  undefined,
  null,
  "",
  "PT5M",
  -1,
  [],
  {},
  [{}],
  { unknown: true },
  [{ id: "a", by: ["ev1"], do: "Do it" }],
  [{ id: "t", title: "A task", steps: [{ id: "a" }] }],
);

describe("the shape of a file that shares parts with one that is right", () => {
  test.prop([procedureFiles, fc.nat(), parts], { numRuns: 1500 })(
    "[WRT1] is found right or wrong as if the whole was looked at, whatever part is another one",
    (file, at, part) => {
      const paths = pathsIn(file);
      const value = damaged(file, paths[at % paths.length] ?? [], part);
      expect(procedureFileOf(value, file) === null).toBe(procedureFileOf(value) === null);
    },
  );

  test.prop([procedureFiles, fc.array(anyChange, { maxLength: 4 })], { numRuns: 300 })(
    "[WRT1] and the same after changes as they are made by gestures",
    (file, changes) => {
      const { file: changed } = applyChanges(file, changes);
      if (changed) expect(procedureFileOf(changed, file) === null).toBe(procedureFileOf(changed) === null);
    },
  );
});
