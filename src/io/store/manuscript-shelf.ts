import type { Instant } from "../../core/units/index.ts";
import type { KeptManuscript } from "../../core/write/index.ts";
import type { StoreTrouble } from "./store-trouble.ts";

/** A manuscript on this device ([WRT1]). */
export interface ManuscriptRow {
  /** Names it on this device; fit for an address. */
  readonly key: string;
  readonly title: string;
  readonly manuscript: KeptManuscript;
  /** The key of the procedure on the shelf that it was begun with; `null` when it was begun from nothing. */
  readonly from: string | null;
  /** Counts how often it was kept, from 1, so that a page sees when another one wrote in between. */
  readonly version: number;
  readonly keptAt: Instant;
}

/** What stands in a field of a manuscript and was not taken yet: the name of the field, and its text. */
export interface HalfTyped {
  readonly field: string;
  readonly text: string;
}

/** What is to be kept of a manuscript. */
export type ManuscriptToKeep = Pick<ManuscriptRow, "key" | "title" | "manuscript" | "from">;

/** What keeping a manuscript came to. */
export type KeptAs =
  | { readonly kind: "kept"; readonly version: number }
  /** Another page kept it since the version on which this one is based; nothing was written over. */
  | { readonly kind: "overtaken"; readonly by: ManuscriptRow }
  | { readonly kind: "not-kept"; readonly reason: StoreTrouble };

/** The manuscripts of a device. */
export interface ManuscriptShelf {
  /** The one that was kept last first. */
  manuscripts(): Promise<readonly ManuscriptRow[]>;
  /** `null` when there is none of that key. */
  manuscript(key: string): Promise<ManuscriptRow | null>;
  /**
   * Keeps a manuscript that is based on a version, which is 0 for a new one. Where another version is kept nothing is written: two pages
   * never overwrite each other unasked.
   */
  keepManuscript(kept: ManuscriptToKeep, basedOn: number): Promise<KeptAs>;
  /** What was being typed when it was kept last; `null` for nothing. */
  halfTyped(key: string): Promise<HalfTyped | null>;
  /** Keeps what is being typed, over what was before; `null` for nothing any more. Where it cannot be kept nothing is said: it stands on the page. */
  keepHalfTyped(key: string, typed: HalfTyped | null): Promise<void>;
  /** Throws a manuscript away, and what was being typed into it. */
  removeManuscript(key: string): Promise<void>;
  /** Calls back whenever {@link manuscripts} may have changed, by this or another tab; returns a function that ends it. */
  watchManuscripts(onChange: () => void): () => void;
}

/** The row that comes after another one, or before all. */
export const nextRow = (
  kept: ManuscriptToKeep,
  before: ManuscriptRow | undefined,
  keptAt: Instant,
): ManuscriptRow => ({ ...kept, version: (before?.version ?? 0) + 1, keptAt });

/** Rows with the one that was kept last first. */
export const lastKeptFirst = (rows: readonly ManuscriptRow[]): readonly ManuscriptRow[] =>
  rows.toSorted((a, b) => b.keptAt - a.keptAt);
