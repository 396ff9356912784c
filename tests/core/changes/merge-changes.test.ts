import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Conflict } from "../../../src/core/changes/index.ts";
import { applyChanges, changesBetween, mergeChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { anyChange, frozen, procedureFiles } from "../procedure-files.ts";

/** What can be applied of changes that leave the ids of others alone, one after the other. */
function changed(file: ProcedureFile, changes: readonly Change[]): ProcedureFile {
  return changes.reduce((current, change) => applyChanges(current, [change]).file ?? current, file);
}

const revisions = fc
  .tuple(procedureFiles, fc.array(anyChange, { maxLength: 6 }), fc.array(anyChange, { maxLength: 6 }))
  .map(([base, ours, theirs]) => ({
    base: frozen(base),
    ours: frozen(changed(base, ours)),
    theirs: frozen(changed(base, theirs)),
  }));

const turned = (conflicts: readonly Conflict[]) =>
  conflicts.map(({ ours, theirs, ...rest }) => ({ ...rest, ours: theirs, theirs: ours }));
const inOrder = (conflicts: readonly Conflict[]) =>
  conflicts.map((one) => JSON.stringify([one.list, one.id, one.field, one])).sort();

/** What a list of changes touches: members, and the fields of members. */
describe("a merge of two revisions", () => {
  test.prop([revisions], { numRuns: 1000 })(
    "[CHG5] is the same whichever side is ours, conflicts included",
    ({ base, ours, theirs }) => {
      const one = mergeChanges(base, ours, theirs);
      const other = mergeChanges(base, theirs, ours);
      expect(other.file).toEqual(one.file);
      expect(inOrder(turned(other.conflicts))).toEqual(inOrder(one.conflicts));
    },
  );

  test.prop([revisions], { numRuns: 500 })(
    "[CHG5] with what nobody changed, or with itself, is the other",
    ({ base, ours }) => {
      expect(mergeChanges(base, ours, base)).toMatchObject({ file: ours, conflicts: [] });
      expect(mergeChanges(base, base, ours).file).toEqual(ours);
      expect(mergeChanges(base, ours, ours).file).toEqual(ours);
    },
  );
});
