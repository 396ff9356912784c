import type { Entry } from "../../core/log/index.ts";
import { isSameEntry, readEntry } from "../../core/log/index.ts";

/** Whether an entry is the one that is kept as this text, whatever the order of its keys. */
export function sameEntry(keptText: string, entry: Entry): boolean {
  if (JSON.stringify(entry.wire) === keptText) return true;
  const kept = readEntry(JSON.parse(keptText) as unknown).entry;
  return kept !== null && isSameEntry(kept, entry);
}
