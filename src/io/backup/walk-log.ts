import type { Entry, EntryStore, LineProblem, TakenIn } from "../../core/log/index.ts";
import { mergeEntries, readLines, writeLines } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { WalkStore } from "../store/index.ts";

/** What importing a log came to. */
export interface ImportedLog extends TakenIn {
  /** The walks that entries in it belong to, in the order in which they turn up. */
  readonly walks: readonly WalkId[];
  /** Lines that are no entry; the others were taken in all the same. */
  readonly problems: readonly LineProblem[];
}

/**
 * The log of a walk as JSON Lines in the order of the log, for a file named {@link walkFileName}; empty when there is none ([REV2]). What was
 * entered here has its seal in it.
 */
export async function exportWalk(store: Pick<WalkStore, "read" | "seal">, walk: WalkId): Promise<string> {
  await store.seal(walk);
  const { entries } = await store.read(walk, 0);
  return writeLines(mergeEntries(entries).ordered);
}

/** What the file of a walk's log is called. The id may come from elsewhere: what no file system likes is left out. */
export function walkFileName(walk: WalkId): string {
  return `${walk.replace(/[^\p{L}\p{N}._-]+/gu, "-").slice(0, 80)}.walk.jsonl`;
}

/** Takes in a log from elsewhere; importing it again changes nothing. */
export async function importWalkLog(store: EntryStore, text: string): Promise<ImportedLog> {
  const { entries, problems } = readLines(text);
  return { ...(await store.takeIn(entries)), walks: walksOf(entries), problems };
}

function walksOf(entries: readonly Entry[]): readonly WalkId[] {
  return [...new Set(entries.map(({ walk }) => walk))];
}
