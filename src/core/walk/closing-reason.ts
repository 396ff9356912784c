import type { Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Ledger } from "./ledger.ts";

/** Why a walk was closed: a message of ours, or what somebody wrote, which is empty when nobody did. */
export function closingReason({ reason, stuck }: NonNullable<Ledger["closed"]>): Said {
  return stuck ? message("walk/stuck") : reason;
}
