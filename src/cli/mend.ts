import { applyChanges, patchBetween } from "../core/changes/index.ts";
import type { Checked } from "../core/check/index.ts";
import type { Finding, PatchOperation } from "../core/procedure/index.ts";
import { words } from "../words/index.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** What mending needs of a checked file. */
type Mendable = Pick<Checked, "file" | "findings">;

/**
 * The JSON Patch that mends a finding, or repairs a file that does not read as a procedure; `null` when none is
 * proposed.
 */
export function patchFor(
  { file }: Pick<Mendable, "file">,
  finding: Finding,
): readonly PatchOperation[] | null {
  if (!finding.mend || !file) return finding.repair;
  const mended = applyChanges(file, finding.mend);
  return mended.file && patchBetween(file, mended.file);
}

/** The JSON Patch proposed for the finding with this number. `check` numbers its findings from 1. */
export function mendOf(checked: Mendable, number: number): readonly PatchOperation[] {
  const finding = checked.findings[number - 1];
  if (!finding) {
    throw new UnusableInputError(words("cli/no-such-finding", { number, count: checked.findings.length }));
  }
  const patch = patchFor(checked, finding);
  if (!patch) {
    throw new UnusableInputError(words("cli/no-mend", { number, code: finding.code }));
  }
  return patch;
}
