import type { SigningKey } from "../../src/core/link/index.ts";
import type { Entry, WireEntry } from "../../src/core/log/index.ts";
import { readEntry, readLines } from "../../src/core/log/index.ts";
import type { ChainEnd, Verification } from "../../src/core/seal/index.ts";
import { chainEndOf, chainedTo, sealed, verifyLog } from "../../src/core/seal/index.ts";
import type { EntryParts } from "./written-entry.ts";
import { written } from "./written-entry.ts";

/** A device that seals what it writes, as a tablet does. */
export class SealingDevice {
  readonly source: string;
  readonly key: SigningKey;
  #end: ChainEnd | null = null;
  #count = 0;

  constructor(source: string, key: SigningKey) {
    this.source = source;
    this.key = key;
  }

  /** Its next entry: a note unless said. */
  async write(parts: EntryParts = {}): Promise<WireEntry> {
    this.#count += 1;
    const entry = chainedTo(entryOf(written(this.source, this.#count, parts)), this.#end, this.key.publicKey);
    this.#end = chainEndOf(entry);
    return (await sealed(entry, this.key))?.wire ?? entry.wire;
  }

  /** So many notes. */
  async notes(count: number, parts: EntryParts = {}): Promise<WireEntry[]> {
    const all: WireEntry[] = [];
    for (let number = 0; number < count; number += 1) all.push(await this.write(parts));
    return all;
  }
}

/** Reads what is known to be an entry. */
function entryOf(wire: WireEntry): Entry {
  const { entry } = readEntry(wire);
  if (!entry) throw new Error("no entry");
  return entry;
}

/** What a log as JSON Lines is worth to somebody who trusts these keys. */
export function verifiedLines(lines: string, trust: readonly string[]): Verification {
  const found = verifyLog(readLines(lines).entries, trust);
  if (!found) throw new Error("nothing to verify");
  return found;
}
