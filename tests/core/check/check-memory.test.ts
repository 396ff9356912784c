import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { CheckMemory, checkOutline } from "../../../src/core/check/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../../src/core/procedure/index.ts";

const REAL = JSON.parse(readFileSync("procedures/osier-bring-in.procedure.json", "utf8")) as ProcedureFile;
const COUNT = REAL.tasks.flatMap(({ steps }) => steps).length;

/** What an author may do to a step: words that are advised on, and figures that the plan rests on. */
const EDITS = fc.record({
  step: fc.nat({ max: COUNT - 1 }),
  more: fc.oneof(
    fc
      .constantFrom("Turning it", "Loosen it and remove the bolt", "Report", "Mate it", "x")
      .map((text) => ({ do: text })),
    fc.integer({ min: 0, max: 400 }).map((minutes) => ({ time: `PT${minutes}M` })),
    fc.constantFrom({ at: undefined }, { by: ["iv"] }, { moves: undefined }),
  ),
});

function edited(
  file: ProcedureFile,
  { step, more }: { readonly step: number; readonly more: object },
): ProcedureFile {
  let at = -1;
  const tasks = file.tasks.map((task) => ({
    ...task,
    steps: task.steps.map((one) => {
      at += 1;
      return at === step ? (JSON.parse(JSON.stringify({ ...one, ...more })) as typeof one) : one;
    }),
  }));
  return { ...file, tasks };
}

describe("a memory of the last check", () => {
  test.prop([fc.array(EDITS, { minLength: 1, maxLength: 4 })], { numRuns: 15 })(
    "[CHK1] [WRT4] changes no finding, whatever is edited from one check to the next",
    (edits) => {
      const memory = new CheckMemory();
      let file = REAL;
      for (const edit of edits) {
        file = edited(file, edit);
        const { procedure } = parseProcedure(file);
        if (!procedure) continue;
        const outline = outlineOf(procedure);
        expect(checkOutline(outline, {}, memory)).toEqual(checkOutline(outline));
      }
    },
  );
});
