import { words } from "../../words/index.ts";
import type { AskedAgain } from "./follow-rows.ts";

/** Says at a step that its decision, or one on which it hangs, is asked again, and which outcome is in force meanwhile. */
export function askedAgainWords({ isAsking, number, outcome: of }: AskedAgain): string {
  const outcome = of.replaceAll("-", " ");
  return isAsking
    ? words("decision/asked-again", { outcome })
    : words("decision/branch-asked-again", { number, outcome });
}
