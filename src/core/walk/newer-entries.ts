import type { IgnoredEntry } from "./ledger.ts";
import type { Folded } from "./walk-fold.ts";

/** The reasons of entries that only a newer version of the program understands. */
const NEWER: ReadonlySet<string> = new Set(["log/unknown-type", "log/needs-newer"]);

/**
 * Returns the entries of a log that only a newer version of the program understands, in the order of the log. While there
 * are any, what is shown may differ from what devices with that version show ([AMD4]). Struck ones do not count.
 */
export function newerEntriesOf({ ignored }: Pick<Folded, "ignored">): readonly IgnoredEntry[] {
  return ignored.filter(({ reason }) => NEWER.has(reason.key));
}
