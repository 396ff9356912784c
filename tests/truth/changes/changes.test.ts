import { readFileSync } from "node:fs";
import type { Operation } from "fast-json-patch";
import jsonPatch from "fast-json-patch";
import { describe, expect, it } from "vitest";
import { applyChanges, changesBetween, mergeChanges, patchBetween } from "../../../src/core/changes/index.ts";
import { effectOf } from "../../../src/core/effect/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const VALUES = "tests/truth/fixtures/changes.json";

interface Case {
  readonly id: string;
  readonly data: unknown;
  readonly expected: unknown;
}
const { cases } = JSON.parse(readFileSync(VALUES, "utf8")) as { cases: readonly Case[] };

/** One case, its data and what is expected as the test needs them. */
function published<Data, Expected>(id: string): { readonly data: Data; readonly expected: Expected } {
  const found = cases.find((one) => one.id === id);
  if (!found) throw new Error(`${VALUES} has no case ${id}`);
  return found as { data: Data; expected: Expected };
}

const checked = (id: string, title: string, run: () => void) => it(`${title} (${id})`, run);

/** Numbered things as the places of a procedure, and as the steps of one task. */
const idOf = (id: number | string) => `n-${id}`;
const asPlaces = (ids: readonly number[]) =>
  fileWith([step("s", "ev1", 1)], { places: ids.map((id) => ({ id: idOf(id) })) });
const asSteps = (ids: readonly number[]) =>
  fileWith([
    task(
      "all",
      ids.map((id) => step(idOf(id), "ev1", 1)),
    ),
  ]);

describe("published values of differences", () => {
  checked("diff-moved-count", "[CHG3] the fewest members are called moved", () => {
    const { data, expected } = published<{ old: number[]; new: number[][] }, number[]>("diff-moved-count");
    expect(data.new).toHaveLength(expected.length);
    for (const fileOf of [asPlaces, asSteps]) {
      const before = fileOf(data.old);
      const found = data.new.map((order) => changesBetween(before, fileOf(order)));
      expect(found.map((changes) => changes.filter((change) => "move" in change).length)).toEqual(expected);
      // Among equal choices the same ones every time.
      expect(data.new.map((order) => changesBetween(before, fileOf(order)))).toEqual(found);
    }
  });

  checked(
    "diff-array-by-index-is-noise",
    "[CHG3] what is put in makes no change of what stands behind it",
    () => {
      const { data, expected } = published<{ a: number[]; b: number[] }, { rfc6902: number }>(
        "diff-array-by-index-is-noise",
      );
      expect(changesBetween(asSteps(data.a), asSteps(data.b))).toHaveLength(1);
      expect(patchBetween(data.a, data.b)).toHaveLength(expected.rfc6902);
    },
  );

  checked("patch-suite", "[CHK1] patches that leave make the documents of the suite", () => {
    const { data } = published<{ doc: unknown; expected?: unknown; error?: string }[], string>("patch-suite");
    const pairs = data.filter((record) => record.expected !== undefined);
    expect(pairs.length).toBeGreaterThan(2);
    for (const { doc, expected } of pairs) {
      const patch = structuredClone(patchBetween(doc, expected)) as Operation[];
      expect(jsonPatch.applyPatch(structuredClone(doc), patch, true).newDocument).toEqual(expected);
    }
  });
});

const merged = (base: ProcedureFile, ours: ProcedureFile, theirs: ProcedureFile) =>
  mergeChanges(base, ours, theirs);
const orderIn = (file: ProcedureFile | null) => file?.tasks[0]?.steps.map(({ id }) => id);

describe("published values of merges", () => {
  checked(
    "merge3-order-cycle",
    "[CHG5] only a ring of order wishes is a conflict, 2 of the 36 pairs of orders of 3",
    () => {
      interface Orders {
        readonly o: number[];
        readonly a: number[];
        readonly b: number[];
      }
      const { data, expected } = published<
        Orders,
        { conflict: number[]; onlyOtherCaseOf36: { a: number[]; b: number[] } }
      >("merge3-order-cycle");
      const orders = data.o.flatMap((first) =>
        data.o
          .filter((second) => second !== first)
          .map((second) => [first, second, ...data.o.filter((third) => third !== first && third !== second)]),
      );
      const conflicts = orders.flatMap((a) =>
        orders.flatMap((b) => {
          const found = merged(asSteps(data.o), asSteps(a), asSteps(b)).conflicts;
          return found.length > 0 ? [{ a, b, found }] : [];
        }),
      );
      expect(orders).toHaveLength(6);
      expect(conflicts.map(({ a, b }) => ({ a, b }))).toEqual(
        expect.arrayContaining([{ a: data.a, b: data.b }, expected.onlyOtherCaseOf36]),
      );
      expect(conflicts).toHaveLength(2);
      for (const { a, b, found } of conflicts)
        expect(found).toEqual([
          {
            list: "steps",
            id: "all",
            field: "order",
            base: expected.conflict.map(idOf),
            ours: a.map(idOf),
            theirs: b.map(idOf),
          },
        ]);
    },
  );

  checked("merge3-id-not-index", "[CHG5] members are merged by id, not by where they stand", () => {
    type Row = { id: number; text: string };
    const { data, expected } = published<{ base: Row[]; ours: Row[]; theirs: Row[] }, Row[]>(
      "merge3-id-not-index",
    );
    const fileOf = (rows: readonly Row[]) =>
      fileWith([
        task(
          "all",
          rows.map(({ id, text }) => step(idOf(id), "ev1", 1, { do: text })),
        ),
      ]);
    const { file } = merged(fileOf(data.base), fileOf(data.ours), fileOf(data.theirs));
    expect(file).toEqual(fileOf(expected));
  });

  checked(
    "merge3-matrix",
    "[CHG5] one field, two fields, the same, dropped and changed, dropped, added twice",
    () => {
      type Row = { id: string; do?: string; time?: string } | null;
      const { data, expected } = published<{ base: Row; a: Row; b: Row }[], string[]>("merge3-matrix");
      const fileOf = (row: Row) =>
        fileWith([
          task("all", [step("other", "ev1", 1), ...(row ? [{ ...step(row.id, "ev1", 1), ...row }] : [])]),
        ]);
      const outcomes = data.map(({ base, a, b }) => {
        const { file, conflicts } = merged(fileOf(base), fileOf(a), fileOf(b));
        const [conflict] = conflicts;
        if (conflict) {
          expect(conflicts).toHaveLength(1);
          if (conflict.field !== null) return `conflict ${conflict.field}`;
          return conflict.base === null ? "conflict both-added" : "conflict changed-and-removed";
        }
        const left = file?.tasks[0]?.steps[1];
        if (!left) return "removed";
        const text = left.do === base?.do || left.do.startsWith("Do ") ? "" : `${left.do} `;
        return `merged ${text}${String(left.time)}`;
      });
      expect(outcomes).toEqual(expected);
    },
  );

  it("[CHG5] what one side drops and the other comes to name is found in the merged file (merge3-matrix, note)", () => {
    const base = fileWith([step("s1", "ev1", 1), step("s2", "ev2", 1)]);
    const ours = fileWith([step("s2", "ev2", 1)]);
    const theirs = fileWith([step("s1", "ev1", 1), step("s2", "ev2", 1, { after: ["s1"] })]);
    const { file, conflicts, findings } = merged(base, ours, theirs);
    expect([orderIn(file), conflicts]).toEqual([["s2"], []]);
    expect(findings.map(({ code, level, things }) => [code, level, things])).toEqual([
      ["file/no-such-reference", "error", ["s1"]],
    ]);
  });
});

describe("published values of an effect", () => {
  checked("compare-plan-effect", "[CHG7] finish and slack before and after", () => {
    type Written = { by: string; min: number; after?: string[] };
    type Rows = Record<string, Written>;
    type Side = { finish: number; slack: Record<string, number> };
    const { data, expected } = published<
      { before: Rows; after: { changed: Record<string, { min: number }>; added: Rows } },
      { before: Side; after: Side }
    >("compare-plan-effect");
    const stepOf = (id: string, { by, min, after }: Written) => step(id, by, min, after ? { after } : {});
    const before = fileWith(Object.entries(data.before).map(([id, row]) => stepOf(id, row)));
    const last = Object.keys(data.before).at(-1) ?? "";
    const changes: Change[] = [
      ...Object.entries(data.after.changed).map(([id, { min }]) => ({
        change: id,
        set: { time: `PT${min}M` },
      })),
      ...Object.entries(data.after.added).map(([id, row]) => ({ add: stepOf(id, row), behind: last })),
    ];
    const { file } = applyChanges(before, changes);
    const outlines = [before, file].map((one) => outlineOf(procedureOf(one)));
    const [one, other] = outlines;
    if (!one || !other) throw new Error("there are two");
    const { finish, steps } = effectOf(one, other, { samples: 10, seed: 1 });
    for (const side of ["before", "after"] as const) {
      expect(inMinutes(finish[side] ?? (Number.NaN as never))).toBe(expected[side].finish);
      const slack = steps.flatMap(({ id, slack: both }) => {
        const value = both[side];
        return value === null ? [] : [[id, inMinutes(value)] as const];
      });
      expect(Object.fromEntries(slack)).toEqual(expected[side].slack);
    }
  });
});
