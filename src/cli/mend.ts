import type { PatchOperation, ReadProcedure } from "../core/procedure/index.ts";
import { words } from "../words/index.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The mend proposed for the finding with this number, counted from 1 as `check` lists them. */
export function mendOf(
  { findings }: Pick<ReadProcedure, "findings">,
  number: number,
): readonly PatchOperation[] {
  const finding = findings[number - 1];
  if (!finding) {
    throw new UnusableInputError(words("cli/no-such-finding", { number, count: findings.length }));
  }
  if (!finding.mend) {
    throw new UnusableInputError(words("cli/no-mend", { number, code: finding.code }));
  }
  return finding.mend;
}
