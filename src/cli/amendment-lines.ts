import type { AmendmentReview } from "../core/review/index.ts";
import { inWords, words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";

/** The lines that tell amendments: when, who and why, then what changed, and what it did to finish and margin. */
export function amendmentLines(amendments: readonly AmendmentReview[]): readonly string[] {
  return amendments.flatMap((one) => [
    headLine(one),
    ...one.changes.map((change) => `  ${plainText(inWords(change))}`),
    `  ${outcomeLine(one)}`,
  ]);
}

function headLine({ pet, actor, reason }: AmendmentReview): string {
  const told = {
    who: plainText(actor ?? words("cli/somebody")),
    reason: plainText(reason || words("cli/no-reason")),
  };
  return pet === null
    ? words("cli/amendment-before-start", told)
    : words("cli/amendment", { ...told, at: pet });
}

function outcomeLine({ finish, margin }: AmendmentReview): string {
  const { before, after } = finish;
  if (before === null || after === null) return words("cli/amendment-no-forecast");
  return margin.before === null || margin.after === null
    ? words("cli/amendment-finish", { before, after })
    : words("cli/amendment-finish-margin", {
        before,
        after,
        marginBefore: margin.before,
        marginAfter: margin.after,
      });
}
