import type { Entry, LineProblem, TakenIn } from "../../core/log/index.ts";
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
  let { entries } = await store.read(walk, 0);
  if (entries.some(waitsForSeal)) {
    // It was made since the walk was sealed.
    await store.seal(walk);
    entries = (await store.read(walk, 0)).entries;
  }
  return writeLines(mergeEntries(entries).ordered);
}

/** How many entries are read and written at once: so many take a slow tablet less than a frame or two. */
const AT_ONCE = 250;

/**
 * The log of a walk as JSON Lines, in pieces of whole lines and in the order in which the entries came, for whoever puts it together elsewhere; `null` when entries were replaced or taken
 * out meanwhile, and all of it comes anew. Between two pieces the page has time for what is tapped. What was entered here has its seal in it.
 */
export async function* walkInPieces(
  store: Pick<WalkStore, "read" | "seal">,
  walk: WalkId,
): AsyncGenerator<string | null> {
  await store.seal(walk);
  let [offset, known]: [number, number | null] = [0, null];
  for (;;) {
    let page = await store.read(walk, offset, AT_ONCE);
    if (page.entries.some(waitsForSeal)) {
      // It was made since the walk was sealed.
      await store.seal(walk);
      page = await store.read(walk, offset, AT_ONCE);
    }
    if (known !== null && page.edition !== known) {
      [offset, known] = [0, null];
      yield null;
      continue;
    }
    known = page.edition;
    offset = page.offset;
    if (page.entries.length === 0) return;
    yield writeLines(page.entries);
  }
}

const waitsForSeal = ({ wire }: Entry): boolean => wire["prior"] !== undefined && wire["seal"] === undefined;

/** What the file of a walk's log is called. The id may come from elsewhere: what no file system likes is left out. */
export function walkFileName(walk: WalkId): string {
  return `${walk.replace(/[^\p{L}\p{N}._-]+/gu, "-").slice(0, 80)}.walk.jsonl`;
}

/**
 * Takes in a log from elsewhere; importing it again changes nothing. A seal in it that fits is taken for an entry that is here without one, or
 * with another ([SEL8]).
 */
export async function importWalkLog(
  store: Pick<WalkStore, "takeIn" | "adoptSeals">,
  text: string,
): Promise<ImportedLog> {
  const { entries, problems } = readLines(text);
  const taken = await store.takeIn(entries);
  const walks = walksOf(entries);
  const sealed = taken.restamped.filter(({ wire }) => wire["seal"] !== undefined);
  if (sealed.length > 0) {
    const { fittingSeals } = await import("../../core/seal/index.ts");
    for (const walk of walks) {
      const isOfWalk = (entry: Entry) => entry.walk === walk;
      const fitting = fittingSeals(sealed.filter(isOfWalk), entries.filter(isOfWalk));
      if (fitting.length > 0) await store.adoptSeals(walk, fitting);
    }
  }
  return { ...taken, walks, problems };
}

function walksOf(entries: readonly Entry[]): readonly WalkId[] {
  return [...new Set(entries.map(({ walk }) => walk))];
}
