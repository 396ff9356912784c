import type { WalkId } from "../units/index.ts";
import type { Entry } from "./entry.ts";
import type { Draft } from "./stamp.ts";

/** Entries in the order in which a store got them. */
export interface EntryPage {
  readonly entries: readonly Entry[];
  /** The position of the last entry in order of arrival; reading after it gives later entries. It grows and may skip. */
  readonly offset: number;
  /**
   * Changes when entries of the walk were replaced or taken out (stamped anew by a hub's clock, overruled by another entry
   * of the same key, set aside). A reader of an earlier edition must discard what it read and start again at 0.
   */
  readonly edition: number;
}

/** What became of entries that a store was given from elsewhere. */
export interface TakenIn {
  readonly added: number;
  /** How many were here already, restamped ones included. */
  readonly known: number;
  /** Those that are here under another stamp, which stays. */
  readonly restamped: readonly Entry[];
  /** Entries that were left out, because a different entry with the same `source` and `id` is here. */
  readonly conflicting: readonly Entry[];
}

/** Where the entries of walks are kept. Everything that a store has confirmed survives the end of the program. */
export interface EntryStore {
  /** Makes entries of drafts, in their order, and keeps all of them or none. Resolves only when they are durable ([LOG5]). */
  append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]>;
  /** Keeps entries that were made elsewhere; entries that are here already are no error. Resolves when they are durable. */
  takeIn(entries: readonly Entry[]): Promise<TakenIn>;
  /** The entries of a walk that came after `offset`, the first `most` of them; 0 and no `most` read all. */
  read(walk: WalkId, offset: number, most?: number): Promise<EntryPage>;
  /** Calls back whenever the walk's log may have grown, by this or another tab; returns a function that ends it. */
  watch(walk: WalkId, onChange: () => void): () => void;
}
