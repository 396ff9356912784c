import { marginOf } from "../course/index.ts";
import type { Duration } from "../units/index.ts";
import type { Amendment, AmendmentSeen } from "./amendment.ts";
import type { Ledger } from "./ledger.ts";

/** What an amendment did to the walk, by the forecast at its time. */
export interface AmendmentOutcome {
  /** PET; `null` where there was no forecast. */
  readonly finish: { readonly before: Duration | null; readonly after: Duration | null };
  /** Limit − finish, below zero when over; `null` without a limit or a forecast. */
  readonly margin: { readonly before: Duration | null; readonly after: Duration | null };
}

/** Returns what an amendment did to finish and margin ([AMD2]). */
export function amendmentOutcome({ replanned: { before, after } }: Amendment): AmendmentOutcome {
  return {
    finish: { before: before?.finish ?? null, after: after?.finish ?? null },
    margin: { before: before && marginOf(before), after: after && marginOf(after) },
  };
}

/** Returns who has seen an amendment, in the order of the log ([AMD4]). */
export function amendmentSeenBy(
  { amendmentsSeen }: Pick<Ledger, "amendmentsSeen">,
  { source, id }: Pick<Amendment, "source" | "id">,
): readonly AmendmentSeen[] {
  return amendmentsSeen.filter(({ amendment }) => amendment.source === source && amendment.id === id);
}
