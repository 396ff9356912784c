import type { Entry, EntryStore } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { LinkStore } from "./link-store.ts";
import type { WalkCard } from "./walk-card.ts";

/** A store of entries that also lists its walks. */
export interface WalkStore extends EntryStore {
  /** The `source` under which this store enters what is appended. */
  readonly source: string;
  /** What is kept of the links of walks. */
  readonly links: LinkStore;
  /**
   * Seals what was entered here and waits for it ([SEL2]); returns what got its seal by this call. Whatever cannot be sealed waits no longer:
   * nothing is kept from being sent for the want of a seal.
   */
  seal(walk: WalkId): Promise<readonly Entry[]>;
  /** Notes that entries that are here and were made by this device to be sealed wait for their seals. */
  awaitSeals(walk: WalkId, entries: readonly Entry[]): Promise<void>;
  /** Gives entries that are here the seals that the same statements have elsewhere, which were found to fit. */
  adoptSeals(walk: WalkId, entries: readonly Entry[]): Promise<void>;
  /** All walks that have entries here, the one in which something happened last first. */
  walks(): Promise<readonly WalkCard[]>;
  /** Calls back whenever {@link walks} may have changed, by this or another tab; returns a function that ends it. */
  watchWalks(onChange: () => void): () => void;
  /**
   * Takes a walk, all its entries and its link off this device; there is no way back but an export. The sequence numbers it used
   * stay used, so that a copy of it elsewhere never meets other entries under the same ids. False when the disk could not
   * be told, so that the walk will be back at the next start.
   */
  removeWalk(walk: WalkId): Promise<boolean>;
}
