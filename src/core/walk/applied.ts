import type { Message } from "../../words/index.ts";
import type { Ledger } from "./ledger.ts";

/**
 * What an entry did to a ledger: the new one, or why it had no effect ([LOG4]); both when it changed nothing but is taken
 * note of.
 */
export type Applied =
  | { readonly ledger: Ledger; readonly ignored: Message | null }
  | { readonly ledger: null; readonly ignored: Message };

/** The entry had no effect, and why. */
export function ignored(reason: Message): Applied {
  return { ledger: null, ignored: reason };
}

/** The entry had an effect. */
export function applied(ledger: Ledger): Applied {
  return { ledger, ignored: null };
}
