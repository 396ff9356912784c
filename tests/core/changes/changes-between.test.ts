import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges, changesBetween, inverseOf } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { parseProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { anyChange, frozen, procedureFiles, withKeysTurned } from "../procedure-files.ts";

function applied(file: ProcedureFile, changes: readonly Change[]): ProcedureFile {
  const result = applyChanges(file, changes);
  if (result.problem) throw new Error(`${JSON.stringify(changes)}: ${JSON.stringify(result.problem)}`);
  return result.file;
}

/** What can be applied of changes, one after the other. */
function applicable(file: ProcedureFile, changes: readonly Change[]): Change[] {
  const taken: Change[] = [];
  for (const change of changes) if (!applyChanges(file, [...taken, change]).problem) taken.push(change);
  return taken;
}

describe("the changes between two procedures", () => {
  test.prop([procedureFiles], { numRuns: 300 })("are between procedures that parse", (file) => {
    expect(parseProcedure(file).findings.filter(({ level }) => level === "error")).toEqual([]);
  });

  test.prop([procedureFiles, procedureFiles], { numRuns: 1000 })(
    "[CHG3] make the second of the first, whatever the two are, order included",
    (before, after) => {
      expect(applied(frozen(before), changesBetween(before, frozen(after)))).toEqual(after);
    },
  );
});
