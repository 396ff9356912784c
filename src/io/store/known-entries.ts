import type { Entry } from "../../core/log/index.ts";
import { readEntry, UnreadableEntryError } from "../../core/log/index.ts";
import type { EntryRow } from "./database.ts";

/**
 * The entries of a database that somebody in this page still holds, by offset. Reading an entry again returns the
 * same object as before, so that its holder can compare by identity to see that nothing changed. An entry
 * that nobody holds any more is forgotten: this takes no more memory than its holders do.
 */
export class KnownEntries {
  readonly #known = new Map<number, WeakRef<Entry>>();
  readonly #forgotten = new FinalizationRegistry<number>((offset) => {
    // Another object may have taken its place since.
    if (this.#known.get(offset)?.deref() === undefined) this.#known.delete(offset);
  });

  /** Notes entries that were added to the database one after the other, the last of them at an offset. */
  note(entries: readonly Entry[], last: number): void {
    for (const [index, entry] of entries.entries()) this.#keep(last - entries.length + 1 + index, entry);
  }

  /** The entry of a row. Throws an {@link UnreadableEntryError} for a row that is none, since only entries are written. */
  entryOf({ offset, wire }: EntryRow): Entry {
    const known = this.#known.get(offset)?.deref();
    if (known && isOf(known, wire)) return known;
    const { entry, problem } = readEntry(wire);
    if (!entry) throw new UnreadableEntryError(`at offset ${offset}: ${problem.key}`);
    this.#keep(offset, entry);
    return entry;
  }

  #keep(offset: number, entry: Entry): void {
    this.#known.set(offset, new WeakRef(entry));
    this.#forgotten.register(entry, offset);
  }
}

/** A row changes in nothing but its seal, which another tab may have made, but offsets begin anew in a database that was wiped. */
function isOf({ wire: known }: Entry, wire: EntryRow["wire"]): boolean {
  return (
    known.source === wire.source &&
    known.id === wire.id &&
    known.hlc === wire.hlc &&
    known.subject === wire.subject &&
    known["seal"] === wire["seal"]
  );
}
