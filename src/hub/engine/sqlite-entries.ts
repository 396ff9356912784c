import { createHash } from "node:crypto";
import type Database from "better-sqlite3";
import type { Entry } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { compareEntry } from "./compare-entry.ts";
import type { AppendOutcome, Comparison, RefusedEntry, StoredEntry, StoredWalk } from "./engine.ts";
import { pageOf } from "./page-limit.ts";

/** The tables of entries. */
export interface SqliteEntries {
  /** Puts an entry behind the others of its walk, within the transaction that is open. */
  add(
    walk: WalkId,
    entry: Entry,
    received: Instant,
    via: string | null,
  ): { outcome: AppendOutcome; kept: StoredEntry | null };
  compare(walk: WalkId, entry: Entry): Comparison | null;
  read(walk: WalkId, after: number, limit: number): readonly StoredEntry[];
  head(walk: WalkId): number;
  behind(walk: WalkId, after: number): number;
  lengthOf(walk: WalkId, device: string | null): number;
  cameThrough(walk: WalkId, device: string): string | null;
  sequencesOf(walk: WalkId, source: string): readonly string[];
  checkAt(walk: WalkId, offset: number): string | null;
  walks(): readonly StoredWalk[];
  keepRefused(walk: WalkId, refused: RefusedEntry): void;
  refused(walk: WalkId, limit: number): readonly RefusedEntry[];
}

/** The most refused entries that are kept for each walk. */
export const MOST_REFUSED = 1_000;

interface WalkHead {
  readonly number: number;
  readonly head: number;
}

/** The check of an entry: the hash of the one before it and of its own text. `before` is empty for the first of a walk. */
export function chained(before: string, text: string): string {
  return createHash("sha256").update(`${before}\n${text}`).digest("base64url").slice(0, 16);
}

/** Reads and writes the tables of entries of an open database. */
export function sqliteEntries(database: Database.Database): SqliteEntries {
  const walkOf = database.prepare<[string], WalkHead>("SELECT number, head FROM walks WHERE walk = ?");
  const newWalk = database.prepare<[string], WalkHead>(
    "INSERT INTO walks (walk, entries, head) VALUES (?, 0, 0) RETURNING number, head",
  );
  const grown = database.prepare("UPDATE walks SET entries = entries + 1, head = ? WHERE number = ?");
  const insert = database.prepare(
    "INSERT INTO entries VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (walk, source, id) DO NOTHING",
  );
  const textOf = database
    .prepare<[number, string, string], string>(
      "SELECT text FROM entries WHERE walk = ? AND source = ? AND id = ?",
    )
    .pluck();
  const after = database.prepare<[string, number, number], StoredEntry>(`
    SELECT "offset", text, source, id, sequence, received, via, "check" FROM entries
    WHERE walk = (SELECT number FROM walks WHERE walk = ?) AND "offset" > ? ORDER BY "offset" LIMIT ?`);
  const longer = database.prepare(`
    INSERT INTO sources VALUES (?, ?, ?) ON CONFLICT DO UPDATE SET length = length + excluded.length`);
  const lengthOf = database.prepare<[string], number>(`
    SELECT coalesce(sum(length), 0) FROM sources WHERE walk = (SELECT number FROM walks WHERE walk = ?)`);
  const lengthBelow = database.prepare<[string, string, string, string], number>(`
    SELECT coalesce(sum(length), 0) FROM sources WHERE walk = (SELECT number FROM walks WHERE walk = ?)
      AND (source = ? OR (source > ? AND source < ?))`);
  const cameThrough = database.prepare<[string, string, string, string], string>(`
    SELECT via FROM entries WHERE walk = (SELECT number FROM walks WHERE walk = ?)
      AND (source = ? OR (source > ? AND source < ?)) AND via IS NOT NULL LIMIT 1`);
  const sequences = database.prepare<[string, string], string>(`
    SELECT sequence FROM entries WHERE walk = (SELECT number FROM walks WHERE walk = ?) AND source = ?`);
  const checkAt = database
    .prepare<[number, number], string>('SELECT "check" FROM entries WHERE walk = ? AND "offset" = ?')
    .pluck();
  const all = database.prepare<[], StoredWalk>(
    "SELECT walk, entries, head FROM walks WHERE entries > 0 ORDER BY walk",
  );
  const refuse = database.prepare("INSERT INTO refused (walk, received, reason, text) VALUES (?, ?, ?, ?)");
  const forget = database.prepare(`
    DELETE FROM refused WHERE walk = ? AND number <= (
      SELECT number FROM refused WHERE walk = ? ORDER BY number DESC LIMIT 1 OFFSET ${MOST_REFUSED})`);
  const lastRefused = database.prepare<[string, number], RefusedEntry>(`
    SELECT text, reason, received FROM refused WHERE walk = ? ORDER BY number DESC LIMIT ?`);

  const compare = (row: WalkHead, entry: Entry): Comparison | null => {
    const { source, id } = entry.wire;
    const other = textOf.get(row.number, source, id);
    return other === undefined ? null : compareEntry(other, entry);
  };

  return {
    compare: (walk, entry) => {
      const row = walkOf.get(walk);
      return row ? compare(row, entry) : null;
    },
    add: (walk, entry, received, via) => {
      const row = walkOf.get(walk) ?? newWalk.get(walk);
      if (!row) throw new Error(`no row for the walk ${walk}`);
      const { source, id, sequence } = entry.wire;
      const text = JSON.stringify(entry.wire);
      const kept = {
        offset: row.head + 1,
        text,
        source,
        id,
        sequence,
        received,
        via,
        check: chained(checkAt.get(row.number, row.head) ?? "", text),
      };
      const { number } = row;
      const { changes } = insert.run(
        number,
        kept.offset,
        source,
        id,
        sequence,
        received,
        via,
        text,
        kept.check,
      );
      if (changes === 0) {
        return { outcome: compare(row, entry) ?? { kind: "conflict" }, kept: null };
      }
      grown.run(kept.offset, row.number);
      longer.run(row.number, source, text.length);
      return { outcome: { kind: "accepted", offset: kept.offset }, kept };
    },
    read: (walk, offset, limit) => pageOf(after.iterate(walk, offset, limit), limit),
    lengthOf: (walk, device) =>
      (device === null
        ? lengthOf.pluck().get(walk)
        : // What is below a device begins with it and "/", behind which "0" comes next.
          lengthBelow.pluck().get(walk, device, `${device}/`, `${device}0`)) ?? 0,
    cameThrough: (walk, device) => cameThrough.pluck().get(walk, device, `${device}/`, `${device}0`) ?? null,
    sequencesOf: (walk, source) => sequences.pluck().all(walk, source),
    head: (walk) => walkOf.get(walk)?.head ?? 0,
    behind: (walk, offset) => Math.max(0, (walkOf.get(walk)?.head ?? 0) - offset),
    checkAt: (walk, offset) => {
      const row = walkOf.get(walk);
      return (row && checkAt.get(row.number, offset)) ?? null;
    },
    walks: () => all.all(),
    keepRefused: database.transaction((walk: WalkId, { text, reason, received }: RefusedEntry) => {
      refuse.run(walk, received, reason, text);
      forget.run(walk, walk);
    }),
    refused: (walk, limit) =>
      pageOf(lastRefused.iterate(walk, Math.min(limit, MOST_REFUSED)), MOST_REFUSED).reverse(),
  };
}
