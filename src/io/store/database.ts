import type { EntityTable } from "dexie";
import { Dexie } from "dexie";
import type { WireEntry } from "../../core/log/index.ts";
import type { Remark } from "../../core/remarks/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { AsideEntry } from "./link-row.ts";
import type { HalfTyped, ManuscriptRow } from "./manuscript-shelf.ts";
import type { KeptKey } from "./signing-key.ts";
import type { StoredLinkRow, StoredWalkSummary } from "./stored-rows.ts";

/** A row of the table of entries: what was written, and its place in the order of arrival. */
export interface EntryRow {
  readonly offset: number;
  readonly wire: WireEntry;
}

/** A row of the table of procedures. */
export interface ProcedureRow {
  readonly key: string;
  readonly id: string;
  /** `""` when the procedure names none: IndexedDB cannot index an absence. */
  readonly revision: string;
  readonly title: string;
  readonly text: string;
  readonly importedAt: Instant;
  /** Absent for a text that was put in from a file. */
  readonly saved?: RevisionNote;
}

/** Who saved a revision on this device, and why, in their own words. */
export interface RevisionNote {
  readonly by: string;
  readonly why: string;
}

/** A row of the table of remarks. */
export interface RemarkRow {
  /** All that the remark says: one that has the id of another and differs is another row. */
  readonly key: string;
  readonly procedure: string;
  readonly remark: Remark;
}

/** What the device knows about itself: its source, the key that it proves it by, and what is being typed into each manuscript. */
export type DeviceRow =
  | { readonly key: "source"; readonly value: string }
  | { readonly key: "signing-key"; readonly value: KeptKey }
  | { readonly key: HalfTypedKey; readonly value: HalfTyped };

type HalfTypedKey = `half-typed ${string}`;

/** The key of what is being typed into a manuscript. */
export const halfTypedKey = (manuscript: string): HalfTypedKey => `half-typed ${manuscript}`;

/** A row of the table of entries that were set aside, numbered in the order in which that was done. */
export type AsideRow = AsideEntry & { readonly number: number };

/** An IndexedDB to use in place of the global one, for tests. */
export interface IndexedDbParts {
  readonly indexedDB: IDBFactory;
  readonly IDBKeyRange: typeof globalThis.IDBKeyRange;
}

/** The name of the app's database. */
export const DATABASE_NAME = "tetherline";

/**
 * The app's database. Strict durability: a transaction is complete only when the operating system was told to flush it
 * ([LOG5]). Dexie's query cache is off, so that nothing is ever shown that is not yet written. Version 2
 * adds what links need, version 3 remarks and manuscripts; the tables of earlier versions stay as they are.
 */
export class TetherlineDatabase extends Dexie {
  readonly entries!: EntityTable<EntryRow, "offset">;
  readonly walks!: EntityTable<StoredWalkSummary, "walk">;
  readonly procedures!: EntityTable<ProcedureRow, "key">;
  readonly device!: EntityTable<DeviceRow, "key">;
  readonly links!: EntityTable<StoredLinkRow, "walk">;
  readonly aside!: EntityTable<AsideRow, "number">;
  readonly remarks!: EntityTable<RemarkRow, "key">;
  readonly manuscripts!: EntityTable<ManuscriptRow, "key">;

  constructor(name: string = DATABASE_NAME, parts?: IndexedDbParts) {
    super(name, { chromeTransactionDurability: "strict", cache: "disabled", ...parts });
    this.version(1).stores({
      entries: "++offset, &[wire.subject+wire.source+wire.id], [wire.subject+offset]",
      walks: "walk",
      procedures: "key, [id+revision]",
      device: "key",
    });
    this.version(2).stores({ links: "walk", aside: "++number, walk" });
    this.version(3).stores({ remarks: "key, procedure", manuscripts: "key" });
  }
}
