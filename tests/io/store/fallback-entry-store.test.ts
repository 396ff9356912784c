// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it, vi } from "vitest";
import { keyOf, mergeEntries, wallOf } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { WalkStore } from "../../../src/io/store/index.ts";
import { FallbackEntryStore, openStore } from "../../../src/io/store/index.ts";
import { at, clock, ground, joining } from "./link-stand-ins.ts";
import {
  entryFrom,
  failWrites,
  freshIndexedDb,
  note,
  onWriteTransactions,
  openTab,
  source,
  standing,
  start,
  textsOf,
  until,
  walk,
} from "./stand-ins.ts";

const memorySource = `${source}/memory-k7f3`;

async function withDisk() {
  const parts = freshIndexedDb();
  const { database, store } = await openTab(parts);
  const log = new FallbackEntryStore({ durable: store, memorySource, now: standing });
  return { parts, database, disk: store, log };
}

const allTexts = async (log: FallbackEntryStore) =>
  textsOf(mergeEntries((await log.read(walk, 0)).entries).ordered);

describe("a store whose disk fills up in the middle of a walk", () => {
  it("[LOG5] confirms the failed drafts as kept in memory only and loses nothing before them", async () => {
    const { database, log } = await withDisk();
    await log.append(walk, [note("a"), note("b")]);
    const cursor = (await log.read(walk, 0)).offset;
    const onStatus = vi.fn();
    log.watchStatus(onStatus);
    expect(log.status()).toEqual({ kind: "durable" });

    failWrites(database, "QuotaExceededError");
    const kept = await log.append(walk, [note("c"), note("d")]);

    expect(textsOf(kept)).toEqual(["c", "d"]);
    expect(kept.every((entry) => log.isUnsaved(entry))).toBe(true);
    expect(log.status()).toMatchObject({ kind: "memory", reason: "full", unsaved: 2 });
    expect(log.status()).toBe(log.status());
    await until(() => onStatus.mock.calls.length > 0);
    expect(await allTexts(log)).toEqual(["a", "b", "c", "d"]);
    expect(textsOf((await log.read(walk, cursor)).entries)).toEqual(expect.arrayContaining(["c", "d"]));
  });

  it("[LOG5] goes back to disk by itself once there is room, with an entry 20 s after the trouble", async () => {
    const { database, store: disk } = await openTab(freshIndexedDb());
    let ticks = 1000;
    const log = new FallbackEntryStore({ durable: disk, memorySource, now: standing, ticks: () => ticks });
    await log.append(walk, [note("a")]);
    const trouble = failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("b")]);
    trouble.mend();
    ticks += 19_999;
    await log.append(walk, [note("c")]);
    expect(log.status()).toMatchObject({ kind: "memory", unsaved: 2 });
    ticks += 1;
    await log.append(walk, [note("d")]);
    await until(() => log.status().kind === "durable");
    expect(textsOf(mergeEntries((await disk.read(walk, 0)).entries).ordered)).toEqual(["a", "b", "c", "d"]);
    const [next] = await log.append(walk, [note("e")]);
    expect(next?.wire.source).toBe(source);
    expect(await allTexts(log)).toEqual(["a", "b", "c", "d", "e"]);
  });

  it("[LOG5] stays in memory while the disk is still in trouble, and tries again only 20 s later", async () => {
    const { database, store: disk } = await openTab(freshIndexedDb());
    let ticks = 0;
    const log = new FallbackEntryStore({ durable: disk, memorySource, now: standing, ticks: () => ticks });
    failWrites(database, "QuotaExceededError");
    for (const text of ["a", "b", "c"]) {
      await log.append(walk, [note(text)]);
      ticks += 20_000;
    }
    await until(() => log.status().kind === "memory");
    expect(log.status()).toMatchObject({ kind: "memory", reason: "full", unsaved: 3 });
    expect(await allTexts(log)).toEqual(["a", "b", "c"]);
  });

  it("[LOG1] enters under another source, so that no id is given twice after a restart", async () => {
    const { parts, database, log } = await withDisk();
    await log.append(walk, [note("a")]);
    failWrites(database, "QuotaExceededError");
    const [lost] = await log.append(walk, [note("b")]);
    expect(lost?.wire.source).toBe(memorySource);
    expect(lost?.wire.sequence).toBe("0000000001");

    const tomorrow = await openTab(parts);
    const [next] = await tomorrow.store.append(walk, [note("c")]);
    expect(lost && next && keyOf(lost) !== keyOf(next)).toBe(true);
  });

  it("goes on reading what another tab still writes", async () => {
    const { parts, database, log } = await withDisk();
    const onChange = vi.fn();
    log.watch(walk, onChange);
    failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("a")]);
    const { offset } = await log.read(walk, 0);
    onChange.mockClear();

    const other = await openTab(parts);
    await other.store.append(walk, [note("b")]);
    await until(() => onChange.mock.calls.length > 0);
    expect(textsOf((await log.read(walk, offset)).entries)).toEqual(["b"]);
  });

  it("[LOG5] writes to disk what was on its way to memory while the disk came back", async () => {
    const { parts, database, disk, log } = await withDisk();
    const { mend } = failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("a")]);
    mend();
    const read = disk.read.bind(disk);
    let comeBack = () => {};
    const back = new Promise<void>((resolve) => {
      comeBack = resolve;
    });
    vi.spyOn(disk, "read").mockImplementationOnce(async (...asked) => {
      await back;
      return read(...asked);
    });
    const late = log.append(walk, [note("b")]);
    expect(await log.retry()).toEqual({ kind: "durable" });
    comeBack();
    const [entry] = await late;
    await until(() => log.status().kind === "durable" && entry !== undefined && !log.isUnsaved(entry));
    const tomorrow = await openTab(parts);
    expect(textsOf((await tomorrow.store.read(walk, 0)).entries).sort()).toEqual(["a", "b"]);
  });

  it("[LOG5] writes to disk what was in memory once there is room again", async () => {
    const { parts, database, log } = await withDisk();
    await log.append(walk, [note("a")]);
    const { mend } = failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("b")]);
    await log.takeIn([entryFrom("/devices/ground", 1)]);
    expect(await log.retry()).toMatchObject({ kind: "memory", reason: "full", unsaved: 2 });
    const { offset } = await log.read(walk, 0);

    mend();
    expect(await log.retry()).toEqual({ kind: "durable" });
    const [after] = await log.append(walk, [note("c")]);
    expect(after?.wire.source).toBe(source);
    expect(textsOf((await log.read(walk, offset)).entries)).toEqual(["c"]);
    const tomorrow = await openTab(parts);
    expect(textsOf((await tomorrow.store.read(walk, 0)).entries).sort()).toEqual(["a", "b", "c", "note 1"]);
  });

  it("[LOG5] goes on with what passed through when the disk cannot even be read", async () => {
    const { database, log } = await withDisk();
    await log.append(walk, [note("a")]);
    await log.takeIn([entryFrom("/devices/ground", 1)]);
    database.close();
    await log.append(walk, [note("b")]);
    expect((await allTexts(log)).sort()).toEqual(["a", "b", "note 1"]);
    expect(log.status()).toMatchObject({ kind: "memory", reason: "lost", unsaved: 1 });
    expect((await log.walks()).map(({ entries }) => entries)).toEqual([3]);
  });

  it("[LOG5] goes on in memory when the database was wiped in another tab", async () => {
    const { database, log } = await withDisk();
    await log.append(walk, [note("a")]);
    await database.delete({ disableAutoOpen: false });
    await log.append(walk, [note("b")]);
    expect(await allTexts(log)).toEqual(["a", "b"]);
    expect(log.status()).toMatchObject({ reason: "lost" });
  });

  it("[LINK] tells the hub's entries from those of a file, when the disk is back too", async () => {
    const { database, log } = await withDisk();
    await log.links.join(joining);
    await log.links.takeIn(walk, [], at(0));
    const disk = failWrites(database, "QuotaExceededError");
    await log.links.takeIn(walk, [entryFrom(ground, 1)], at(1));
    await log.takeIn([entryFrom(ground, 2)]);
    expect(log.status()).toMatchObject({ kind: "memory", unsaved: 2 });
    disk.mend();
    expect(await log.retry()).toEqual({ kind: "durable" });
    const row = await log.links.get(walk);
    expect(row?.onlyHere).toEqual([keyOf(entryFrom(ground, 2))]);
  });

  it("[LINK] has on disk what was stamped anew in memory, when the disk is back", async () => {
    let time = start + 86_400_000;
    const parts = freshIndexedDb();
    const now = () => time as Instant;
    const { database, store } = await openTab(parts, now);
    const log = new FallbackEntryStore({ durable: store, memorySource, now });
    await log.links.join(joining);
    await log.links.takeIn(walk, [], at(0));
    await log.append(walk, [note("a day ahead")]);
    const disk = failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("in memory")]);
    time = start;
    await log.links.takeIn(walk, [], at(1));
    await log.links.setClock(walk, clock(0), "own");
    const inMemory = mergeEntries((await log.read(walk, 0)).entries).ordered;
    expect(inMemory.map(({ hlc }) => wallOf(hlc))).toEqual([start, start]);
    disk.mend();
    expect(await log.retry()).toEqual({ kind: "durable" });
    expect(mergeEntries((await store.read(walk, 0)).entries).ordered).toEqual(inMemory);
    expect(await log.links.unsent(walk)).toBe(2);
    expect(await log.links.aside(walk)).toEqual([]);
  });

  it("[SEL1] what is made again in memory names the entry it was made of, on disk too once that is back", async () => {
    const { database, log, parts } = await withDisk();
    await log.links.join(joining);
    await log.links.takeIn(walk, [], at(0));
    const [ours] = await log.append(walk, [note("ours")]);
    if (!ours) throw new Error("nothing was appended");
    const disk = failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("in memory")]);
    const theirs = entryFrom(source, 1, { data: { text: "theirs" } });
    await log.links.takeIn(walk, [theirs], at(1));
    const remade = {
      source: memorySource,
      id: "0000000002",
      remadefrom: keyOf(ours),
      data: { text: "ours" },
    };
    const remadeIn = async (store: Pick<WalkStore, "read">) =>
      (await store.read(walk, 0)).entries.filter(({ wire }) => "remadefrom" in wire).map(({ wire }) => wire);
    expect(await remadeIn(log)).toMatchObject([remade]);
    disk.mend();
    expect(await log.retry()).toEqual({ kind: "durable" });
    expect(await remadeIn((await openTab(parts)).store)).toMatchObject([remade]);
  });

  it("finds the reason inside a failed commit", async () => {
    let isFull = false;
    const stop = onWriteTransactions((transaction) =>
      transaction.addEventListener("complete", (event) => {
        if (!isFull) return;
        event.stopImmediatePropagation();
        Object.defineProperty(transaction, "error", {
          value: new DOMException("no room", "QuotaExceededError"),
        });
        transaction.onabort?.(new Event("abort"));
      }),
    );
    const { log } = await withDisk();
    isFull = true;
    await log.append(walk, [note("a")]);
    stop();
    expect(log.status()).toMatchObject({ kind: "memory", reason: "full", unsaved: 1 });
  });

  it("does not hide a mistake of this program", async () => {
    const { log } = await withDisk();
    const wrong = { name: "note.made", data: {}, at: start, actor: "iv" } as never;
    await expect(log.append(walk, [wrong])).rejects.toThrow("note.made");
    expect(log.status()).toEqual({ kind: "durable" });
  });
});

describe("opening the store of a device", () => {
  it("[LOG1] keeps the device's source between visits and between tabs that open at once", async () => {
    const indexedDb = freshIndexedDb();
    const [one, two] = await Promise.all([
      openStore({ now: standing, indexedDb }),
      openStore({ now: standing, indexedDb }),
    ]);
    expect(one.device).toMatch(/^\/devices\/[a-z0-9]{10}$/);
    expect(two.device).toBe(one.device);
    one.close();
    expect((await openStore({ now: standing, indexedDb })).device).toBe(one.device);
    expect((await openStore({ now: standing, indexedDb: freshIndexedDb() })).device).not.toBe(one.device);
  });

  it.each([
    ["SecurityError", "denied"],
    ["InvalidStateError", "denied"],
    ["QuotaExceededError", "full"],
    ["UnknownError", "failed"],
  ] as const)("[LOG5] works in memory and says why when opening ends with %s", async (name, reason) => {
    const indexedDb = freshIndexedDb();
    indexedDb.indexedDB.open = () => {
      throw new DOMException("refused", name);
    };
    const { log, shelf } = await openStore({ now: standing, indexedDb });
    expect(log.status()).toMatchObject({ kind: "memory", reason, unsaved: 0 });
    const [entry] = await log.append(walk, [note("a")]);
    expect(entry && log.isUnsaved(entry)).toBe(true);
    expect(await log.retry()).toMatchObject({ kind: "memory", unsaved: 1 });
    expect(await shelf.procedures()).toEqual([]);
  });

  it("works in memory where there is no IndexedDB", async () => {
    const indexedDb = { ...freshIndexedDb(), indexedDB: undefined as unknown as IDBFactory };
    const { log } = await openStore({ now: standing, indexedDb });
    expect(log.status()).toMatchObject({ kind: "memory", reason: "missing" });
  });

  it("does not wait forever for a browser that does not answer", async () => {
    const indexedDb = freshIndexedDb();
    indexedDb.indexedDB.open = () => new EventTarget() as IDBOpenDBRequest;
    const { log } = await openStore({ now: standing, indexedDb, patience: 30 });
    expect(log.status()).toMatchObject({ kind: "memory", reason: "blocked" });
  });
});
