import type { Finding, ProcedureFile } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { ProcedureRow, RevisionNote } from "./database.ts";
import type { StoreTrouble } from "./store-trouble.ts";

/** A procedure on the shelf. */
export interface KeptProcedure {
  /** Names it on this device; made of lower-case letters, digits and hyphens, fit for an address. */
  readonly key: string;
  readonly id: string;
  readonly revision: string | null;
  readonly title: string;
  /** The file exactly as it was imported. */
  readonly text: string;
  readonly importedAt: Instant;
  /** Who saved it here, and why; absent for a text that was put in from a file. */
  readonly saved?: RevisionNote;
}

/** What adding a procedure came to. The findings are those of reading it. */
export type AddedProcedure =
  | {
      /** `known`: the same text of the same id and revision was here already. */
      readonly kind: "added" | "known";
      readonly procedure: KeptProcedure;
      readonly findings: readonly Finding[];
    }
  | { readonly kind: "refused"; readonly findings: readonly Finding[] }
  | { readonly kind: "not-kept"; readonly reason: StoreTrouble; readonly findings: readonly Finding[] };

/**
 * The procedures of a device. Two procedures are the same when id, revision and text are. Two texts that claim the
 * same id and revision are both kept, since only the reader can say which of them is right. /
 */
export interface ProcedureShelf {
  /** By title, then the latest imported first. */
  procedures(): Promise<readonly KeptProcedure[]>;
  /** `null` when there is none of that key. */
  procedure(key: string): Promise<KeptProcedure | null>;
  /** Keeps a text that reads as a procedure without an error. */
  addProcedure(text: string, importedAt?: Instant, saved?: RevisionNote): Promise<AddedProcedure>;
  /** Takes a procedure off this device; walks keep the copy they were opened with. */
  removeProcedure(key: string): Promise<void>;
  /** Calls back whenever {@link procedures} may have changed, by this or another tab; returns a function that ends it. */
  watchProcedures(onChange: () => void): () => void;
}

/** A text read for the shelf: a row that still lacks its key, or `null` when it is no procedure. */
export async function unkeyedRow(
  text: string,
  importedAt: Instant,
  saved?: RevisionNote,
): Promise<{ readonly row: Omit<ProcedureRow, "key"> | null; readonly findings: readonly Finding[] }> {
  // The reader is loaded when a procedure is brought in, so that the app starts without it.
  const { readProcedure } = await import("../../core/procedure/index.ts");
  const { file, findings } = readProcedure(text);
  return { row: file && { ...rowOf(file, text, importedAt), ...(saved && { saved }) }, findings };
}

function rowOf(
  { id, revision, title }: ProcedureFile,
  text: string,
  importedAt: Instant,
): Omit<ProcedureRow, "key"> {
  return { id, revision: revision ?? "", title, text, importedAt };
}

/** The first key that is free: the id, then the id with a number from 2 on. */
export function freeKey(id: string, taken: (key: string) => boolean): string {
  let key = id;
  for (let number = 2; taken(key); number += 1) key = `${id}-${number}`;
  return key;
}

/** A row as the shelf hands it out. */
export function keptOf(row: ProcedureRow): KeptProcedure {
  return { ...row, revision: row.revision === "" ? null : row.revision };
}

/** Rows in the order of the shelf. */
export function inShelfOrder(rows: readonly ProcedureRow[]): readonly KeptProcedure[] {
  return rows
    .toSorted((a, b) => a.title.localeCompare(b.title, "en") || b.importedAt - a.importedAt)
    .map(keptOf);
}
