import type { Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Ledger } from "./ledger.ts";

/**
 * Returns why a walk was closed: a message of this program, or the text that somebody wrote. The text is empty when
 * nobody wrote one.
 */
export function closingReason({ reason, stuck }: NonNullable<Ledger["closed"]>): Said {
  return stuck ? message("walk/stuck") : reason;
}
