import type { Verification } from "../seal/index.ts";

/** What is known of a log as a record: what verifying it came to and the keys of hubs that were trusted, or why it was not verified. */
export type RecordKnown =
  | { readonly found: Verification; readonly trust: readonly string[] }
  /** Nobody asked; it was not over; it could not be done. */
  | { readonly found: null; readonly why: "not-asked" | "not-finished" | "failed" };

/** What holds until somebody asks. */
export const NOT_ASKED: RecordKnown = { found: null, why: "not-asked" };

/** What an export of a review says of its log as a record. */
export function recordDocument(known: RecordKnown) {
  if (known.found === null) return { verified: false, why: known.why };
  const { verdict, isQuick, entries, code, root, order } = known.found;
  return { verified: true, verdict, quick: isQuick, trusted: known.trust, entries, code, root, order };
}
