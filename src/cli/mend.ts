import type { PatchOperation, ReadProcedure } from "../core/procedure/index.ts";
import { counted } from "./plain-text.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The mend proposed for the finding with this number, counted from 1 as `check` lists them. */
export function mendOf(
  { findings }: Pick<ReadProcedure, "findings">,
  number: number,
): readonly PatchOperation[] {
  const finding = findings[number - 1];
  if (!finding) {
    throw new UnusableInputError(
      `There is no finding ${number}: the file has ${counted(findings.length, "finding")}.`,
    );
  }
  if (!finding.mend) {
    throw new UnusableInputError(
      `For finding ${number} (${finding.code}) no mend is proposed: it needs a judgement.`,
    );
  }
  return finding.mend;
}
