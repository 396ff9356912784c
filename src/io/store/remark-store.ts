import type { Remark } from "../../core/remarks/index.ts";
import type { StoreTrouble } from "./store-trouble.ts";

/** What adding remarks came to. */
export type AddedRemarks =
  | { readonly kind: "kept"; readonly added: number; readonly known: number }
  | { readonly kind: "not-kept"; readonly reason: StoreTrouble };

/**
 * The remarks on this device, beside the shelf; they are only ever added to. Two that have one id and differ are both kept, since only
 * whoever folds them can say that neither counts.
 */
export interface RemarkStore {
  /** Those about a procedure, of all its revisions, or with `null` about all procedures; in no particular order. */
  remarks(procedure: string | null): Promise<readonly Remark[]>;
  /** Keeps those that are not here yet. */
  addRemarks(remarks: readonly Remark[]): Promise<AddedRemarks>;
  /** Calls back whenever remarks may have been added, by this or another tab; returns a function that ends it. */
  watchRemarks(onChange: () => void): () => void;
}

/** Names a remark on this device by all that it says. */
export const remarkKey = ({ by, ...rest }: Remark): string =>
  JSON.stringify([rest.id, by.name, by.role, Object.entries(rest).toSorted(([a], [b]) => (a < b ? -1 : 1))]);
