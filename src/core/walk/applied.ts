import type { Message } from "../../words/index.ts";
import type { Ledger } from "./ledger.ts";

/**
 * The result of applying an entry to a ledger: the resulting ledger, or the reason why the entry had no effect
 * ([LOG4]). Both are set when the entry was recorded but did not change the state of the walk.
 */
export type Applied =
  | { readonly ledger: Ledger; readonly ignored: Message | null }
  | { readonly ledger: null; readonly ignored: Message };

/** Builds the result for an entry that had no effect, with the reason. */
export function ignored(reason: Message): Applied {
  return { ledger: null, ignored: reason };
}

/** Builds the result for an entry that had an effect. */
export function applied(ledger: Ledger): Applied {
  return { ledger, ignored: null };
}
