import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import type { Draft, Entry } from "../../../src/core/log/index.ts";
import { readEntry } from "../../../src/core/log/index.ts";
import type { Instant, StepId, WalkId } from "../../../src/core/units/index.ts";
import type { FindPen } from "../../../src/io/store/find-pen.ts";
import type { IndexedDbParts } from "../../../src/io/store/index.ts";
import { DexieEntryStore, TetherlineDatabase } from "../../../src/io/store/index.ts";

export const walk = "walk-1" as WalkId;
export const otherWalk = "walk-2" as WalkId;
export const source = "/devices/iv-tablet";
export const start = Date.UTC(2031, 3, 2, 9) as Instant;

/** A clock that gives the same moment until it is told otherwise. */
export const standing = (): Instant => start;

/** An IndexedDB of its own, in memory. */
export const freshIndexedDb = (): IndexedDbParts => ({
  indexedDB: new IDBFactory(),
  IDBKeyRange: IDBKeyRange as typeof globalThis.IDBKeyRange,
});

/** What a second tab does: its own connection to the same database. */
export async function openTab(parts: IndexedDbParts, now: () => Instant = standing, findPen?: FindPen) {
  const database = new TetherlineDatabase("tetherline", parts);
  await database.device.put({ key: "source", value: source });
  return { database, store: new DexieEntryStore(database, source, now, findPen) };
}

export const note = (text: string, at: number = start): Draft => ({
  name: "note.made",
  data: { text },
  at: at as Instant,
  actor: "iv",
});

export const done = (step: string): Draft => ({
  name: "step.done",
  data: { step: step as StepId },
  at: start,
  actor: "iv",
});

export const opened = (title: string, mode: "live" | "rehearsal" = "live"): Draft => ({
  name: "walk.opened",
  data: { procedure: { id: "ring-exchange", revision: "B", title }, mode },
  at: start,
  actor: "iv",
});

/** An entry made on another device. */
export function entryFrom(device: string, number: number, overrides: Record<string, unknown> = {}): Entry {
  const sequence = String(number).padStart(10, "0");
  const { entry, problem } = readEntry({
    specversion: "1.0",
    id: sequence,
    source: device,
    type: "tetherline.note.made",
    subject: walk,
    time: new Date(start + number).toISOString(),
    sequence,
    hlc: `${String(start + number).padStart(15, "0")}-0000`,
    actor: "ground",
    data: { text: `note ${number}` },
    ...overrides,
  });
  if (!entry) throw new Error(problem.key);
  return entry;
}

export const textsOf = (entries: readonly Entry[]) =>
  entries.map(({ wire }) => (wire.data as { text?: string }).text);

/** Waits until something holds; the test's own time limit ends it otherwise. */
export async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 5));
}

/**
 * Has a hand in every write transaction of every database from now on, before anyone else listens to it; returns the way
 * to stop.
 */
export function onWriteTransactions(
  meet: (transaction: IDBTransaction, options: IDBTransactionOptions | undefined) => void,
): () => void {
  const begin = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (this: IDBDatabase, stores, mode, options) {
    const transaction = begin.call(this, stores, mode, options);
    if (mode === "readwrite") meet(transaction, options);
    return transaction;
  };
  return () => {
    IDBDatabase.prototype.transaction = begin;
  };
}

/** Makes every write to a database end with an error, as a browser does when the disk is full. */
export function failWrites(database: TetherlineDatabase, name: string): { mend(): void } {
  const original = database.entries.bulkAdd;
  database.entries.bulkAdd = (() => {
    throw new DOMException("no room", name);
  }) as typeof original;
  const { put } = database.walks;
  database.walks.put = (() => {
    throw new DOMException("no room", name);
  }) as typeof put;
  return {
    mend: () => {
      database.entries.bulkAdd = original;
      database.walks.put = put;
    },
  };
}

/** The text of a procedure file of one step. */
export const procedureText = (id: string, more: Record<string, unknown> = {}): string =>
  JSON.stringify({
    format: "tetherline.procedure/1",
    id,
    title: "Ring exchange",
    crew: [{ id: "ev1", call: "EV1", station: "outside" }],
    tasks: [
      { id: "out", title: "Out", steps: [{ id: "open", by: ["ev1"], do: "Open the hatch", time: "PT5M" }] },
    ],
    ...more,
  });
