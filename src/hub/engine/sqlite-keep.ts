import type Database from "better-sqlite3";
import { Listeners } from "../../core/units/index.ts";
import type { Keep } from "./engine.ts";

/** The table of small values. `put` writes within the transaction that is open; `tell` is to be called after it. */
export interface SqliteKeep {
  readonly keep: Keep;
  put(key: string, value: string): void;
  tell(key: string, value: string): void;
}

/** Reads and writes the small values of an open database. `ask` does each piece of work and puts failures into words. */
export function sqliteKeep(database: Database.Database, ask: <T>(work: () => T) => Promise<T>): SqliteKeep {
  const get = database.prepare<[string], string>("SELECT value FROM keep WHERE key = ?").pluck();
  const put = database.prepare(
    "INSERT INTO keep VALUES (?, ?) ON CONFLICT DO UPDATE SET value = excluded.value",
  );
  const create = database.prepare("INSERT INTO keep VALUES (?, ?) ON CONFLICT DO NOTHING");
  const remove = database.prepare("DELETE FROM keep WHERE key = ?");
  const from = database
    .prepare<[string], [string, string]>("SELECT key, value FROM keep WHERE key >= ? ORDER BY key")
    .raw();
  const changes = new Listeners<[key: string, value: string | null]>();

  return {
    keep: {
      get: (key) => ask(() => get.get(key) ?? null),
      put: (key, value) =>
        ask(() => {
          put.run(key, value);
          changes.tell(key, value);
        }),
      create: (key, value) =>
        ask(() => {
          const isNew = create.run(key, value).changes > 0;
          if (isNew) changes.tell(key, value);
          return isNew;
        }),
      remove: (key) =>
        ask(() => {
          if (remove.run(key).changes > 0) changes.tell(key, null);
        }),
      list: (prefix) =>
        ask(() => {
          const found = new Map<string, string>();
          for (const [key, value] of from.iterate(prefix)) {
            if (!key.startsWith(prefix)) break;
            found.set(key, value);
          }
          return found;
        }),
      watch: (prefix, onChange) =>
        changes.add((key, value) => {
          if (key.startsWith(prefix)) onChange(key, value);
        }),
    },
    put: (key, value) => void put.run(key, value),
    tell: changes.tell,
  };
}
