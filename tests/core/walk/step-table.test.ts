import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import type { StepId } from "../../../src/core/units/index.ts";
import { StepTable } from "../../../src/core/walk/step-table.ts";

const ids = fc.constantFrom(..."abcdefgh".split("")) as fc.Arbitrary<StepId>;

describe("a table by step id", () => {
  test.prop([fc.uniqueArray(ids), fc.array(fc.tuple(fc.nat(), ids, fc.integer()), { maxLength: 30 })])(
    "[LOG3] never changes, and a step that comes in later stands behind those that are there",
    (first, changes) => {
      const tables = [
        {
          table: StepTable.filled<number>(first, 0),
          plain: new Map<StepId, number>(first.map((id) => [id, 0])),
        },
      ];
      for (const [which, id, value] of changes) {
        const from = tables[which % tables.length];
        if (from)
          tables.push({ table: from.table.with(id, value), plain: new Map(from.plain).set(id, value) });
      }
      for (const { table, plain } of tables) {
        expect([...table]).toEqual([...plain]);
        for (const id of "abcdefgh") expect(table.get(id as StepId)).toBe(plain.get(id as StepId));
      }
    },
  );
});
