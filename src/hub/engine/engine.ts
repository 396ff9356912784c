import type { Entry, HybridTime } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { type Message, SaidError } from "../../words/index.ts";

/** An entry as a hub keeps it. */
export interface StoredEntry {
  /** The place of the entry in its walk: above 0, growing, with possible gaps. */
  readonly offset: number;
  /** The CloudEvent in JSON, on one line. */
  readonly text: string;
  readonly source: string;
  readonly id: string;
  readonly sequence: string;
  /** When the hub got it, by the hub's clock. */
  readonly received: Instant;
  /** The hub that it came through, by its device name, so that it is never sent back there; `null` when it came from a device. */
  readonly via: string | null;
  /**
   * Stands for this entry at this place of the log: another one there has another check, and where the engine chains them
   * (SQLite), so has a log that differs anywhere before. 16 letters, digits, `-` and `_`.
   */
  readonly check: string;
}

/**
 * What comparing an entry with the one stored under its source and id came to. `known`: it is the same entry, with the
 * stored hybrid time where that is another one. `conflict`: the stored entry is a different one.
 */
export type Comparison =
  | { readonly kind: "known"; readonly hlc?: HybridTime }
  | { readonly kind: "conflict" };

/** What became of one entry. */
export type AppendOutcome = { readonly kind: "accepted"; readonly offset: number } | Comparison;

/** What may go along with entries that are appended. */
export interface AppendOptions {
  readonly via?: string;
  /** Values that are kept under these keys together with the entries: in the same transaction where the engine has any, after them elsewhere. */
  readonly alsoKeep?: ReadonlyMap<string, string>;
}

/** A walk that has entries. */
export interface StoredWalk {
  readonly walk: WalkId;
  readonly entries: number;
  /** Offset of its last entry. */
  readonly head: number;
}

/** An entry that was refused as being in conflict with one that is here, kept for whoever looks into it. */
export interface RefusedEntry {
  readonly text: string;
  readonly reason: string;
  readonly received: Instant;
}

/** Small values by key that a hub must not forget, shared by all hubs on the same engine. Each promise resolves when its change is durable. */
export interface Keep {
  get(key: string): Promise<string | null>;
  put(key: string, value: string): Promise<void>;
  /** Puts a value unless the key has one already; resolves with whether it was put. */
  create(key: string, value: string): Promise<boolean>;
  remove(key: string): Promise<void>;
  /** All keys that begin with a prefix, with their values. */
  list(prefix: string): Promise<ReadonlyMap<string, string>>;
  /** Calls back for each change from now on, by this or another hub, with `null` for one removed; returns a function that ends it. */
  watch(prefix: string, onChange: (key: string, value: string | null) => void): () => void;
}

/** Where a hub keeps the entries of walks. What it has confirmed survives the end of the process. */
export interface Engine {
  /** The kind of engine, for health and metrics: `sqlite` or `jetstream`. */
  readonly kind: string;
  /**
   * The name of this store, of letters, digits, `-` and `_`. Offsets of a store of another name mean nothing here. It
   * changes while the hub runs only by {@link beginEpoch}.
   */
  readonly epoch: string;
  /** What is to be told of how the store was opened, in words; empty when it is what it was. */
  readonly findings: readonly Message[];
  /** What the owner ought to know of how durable confirmed entries are, in words; `null` where they are on the disk. */
  readonly caution: Message | null;
  /** The check of the entry at an offset; `null` where there is no entry. */
  checkAt(walk: WalkId, offset: number): Promise<string | null>;
  /** Takes another epoch, since somebody was told what this store does not hold; durable when resolved. */
  beginEpoch(): Promise<void>;
  /** Calls back after each change of the epoch, by this or another hub; returns a function that ends it. */
  onEpoch(onChange: () => void): () => void;
  /**
   * Writes all that is kept into a file that is not there yet, while everything goes on. Rejects with
   * {@link EngineTroubleError} when that cannot be done.
   */
  backup(file: string): Promise<void>;
  /**
   * Keeps entries of one walk and tells what became of each, in the order given; resolved only when durable. Of equal
   * entries the second is known, of different ones with the same source and id the second is in conflict.
   */
  append(walk: WalkId, entries: readonly Entry[], options?: AppendOptions): Promise<readonly AppendOutcome[]>;
  /** Compares entries of one walk with what is stored, in the order given, with `null` where there is nothing; stores none of them. */
  compare(walk: WalkId, entries: readonly Entry[]): Promise<readonly (Comparison | null)[]>;
  /** The longest entry that can be kept, in characters of its JSON. */
  readonly longestText: number;
  /** How much of a walk a device and the sources below it wrote, or with `null` all of it, in characters of JSON. */
  lengthOf(walk: WalkId, device: string | null): Promise<number>;
  /** The other hub through which something of a device, or of a source below it, came to a walk; `null` when nothing did. */
  cameThrough(walk: WalkId, device: string): Promise<string | null>;
  /** The numbers that a source of a walk has given to its entries, as written, in any order. */
  sequencesOf(walk: WalkId, source: string): Promise<readonly string[]>;
  /**
   * The entries of a walk behind an offset, in order, at most `limit`, and no further ones once they are over a million
   * characters together, so that no page is too large for memory. Empty only when there are none behind the offset.
   */
  read(walk: WalkId, after: number, limit: number): Promise<readonly StoredEntry[]>;
  /** Offset of the last entry of a walk; 0 when it has none. */
  head(walk: WalkId): Promise<number>;
  /** How many entries of a walk are behind an offset: never fewer than there are, and more where its offsets have gaps. */
  behind(walk: WalkId, after: number): Promise<number>;
  walks(): Promise<readonly StoredWalk[]>;
  /**
   * Calls back with what was appended from now on, by this or another hub, each walk's in order of offset and each entry
   * once; returns a function that ends it. Reading up to offset n and then hearing what comes after n misses nothing.
   */
  follow(onAppended: (walk: WalkId, kept: readonly StoredEntry[]) => void): () => void;
  keepRefused(walk: WalkId, refused: RefusedEntry): Promise<void>;
  /** The last refused entries that were kept, oldest first, at most `limit`, and no more than a page of them, see {@link read}. */
  refused(walk: WalkId, limit: number): Promise<readonly RefusedEntry[]>;
  readonly keep: Keep;
  /** Sends a text to all other hubs on the same engine. It may be lost. */
  whisper(topic: string, text: string): void;
  /** Calls back with what other hubs whispered; returns a function that ends it. */
  onWhisper(topic: string, hear: (text: string) => void): () => void;
  /** Ends everything; what was confirmed is kept. */
  close(): Promise<void>;
}

/** The store cannot be opened or written, for a reason that its owner can do something about: a sentence for the console. */
export class EngineTroubleError extends SaidError {
  override readonly name = "EngineTroubleError";
}
