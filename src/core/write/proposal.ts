import type { Message } from "../../words/index.ts";
import type { Change } from "../procedure/index.ts";

/** The changes of a gesture and the rows that are selected after it, or why it is not possible. */
export type Proposal =
  | { readonly changes: readonly Change[]; readonly rows: readonly string[]; readonly problem: null }
  | { readonly changes: null; readonly rows: null; readonly problem: Message };

/** A gesture that is possible. */
export const proposed = (changes: readonly Change[], rows: readonly string[]): Proposal => ({
  changes,
  rows,
  problem: null,
});

/** A gesture that is not possible, with the reason as a sentence. */
export const impossible = (problem: Message): Proposal => ({ changes: null, rows: null, problem });
