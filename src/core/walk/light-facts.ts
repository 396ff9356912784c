import { message } from "../../words/index.ts";
import { sameJson } from "../changes/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { lightSourceOf } from "../plan/index.ts";
import type { Applied } from "./applied.ts";
import { applied, ignored } from "./applied.ts";
import type { Ledger } from "./ledger.ts";
import { ledgerWith } from "./ledger-with.ts";

/**
 * `light.chosen`: from here on day and night come from another source ([LOG2]). What has begun keeps its start, and the
 * plan of record stays.
 */
export function lightChosen(
  ledger: Ledger,
  { at }: Entry,
  { light }: Extract<Fact, { name: "light.chosen" }>,
): Applied {
  if (sameJson(ledger.light, light)) return ignored(message("walk/same-light"));
  if (lightSourceOf(light) === null) return ignored(message("walk/unusable-light"));
  return applied(ledgerWith(ledger, { inForce: ledger.inForce, light }, at));
}
