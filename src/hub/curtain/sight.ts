import type { StoredEntry } from "../engine/index.ts";

/** What a reader sees of a walk. */
export interface Sight {
  /** Whether the reader may be sent entries that were just appended as they are; otherwise they are read with {@link of}. */
  isPlain(kept: readonly StoredEntry[]): boolean;
  /** What the reader is sent for a page of the log, in order. */
  of(page: readonly StoredEntry[]): Promise<readonly StoredEntry[]>;
}
