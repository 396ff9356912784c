// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it, vi } from "vitest";
import { keptOf, manuscriptFrom, newManuscript } from "../../../src/core/write/index.ts";
import type { ManuscriptShelf } from "../../../src/io/store/index.ts";
import { openManuscripts, openStore } from "../../../src/io/store/index.ts";
import { freshIndexedDb, openTab, standing, start, until } from "./stand-ins.ts";

const shelves: readonly [string, () => Promise<ManuscriptShelf>][] = [
  ["on disk", async () => openManuscripts((await openTab(freshIndexedDb())).database, standing)],
  ["in memory", async () => openManuscripts(null, standing)],
];

const fresh = newManuscript({ title: "Ring", crew: [{ call: "EV1", station: "outside" }], task: "One" });
if (!fresh) throw new Error("the test's procedure is not sound");
const ring = { key: "ring", title: "Ring", manuscript: keptOf(fresh), from: null };

describe.each(shelves)("manuscripts %s", (_, open) => {
  it("[WRT1] are kept and found as they were", async () => {
    const shelf = await open();
    expect(await shelf.keepManuscript(ring, 0)).toEqual({ kind: "kept", version: 1 });
    expect(await shelf.keepManuscript(ring, 1)).toEqual({ kind: "kept", version: 2 });
    const row = await shelf.manuscript("ring");
    expect(row).toEqual({ ...ring, version: 2, keptAt: start });
    expect(row && manuscriptFrom(row.manuscript)).toEqual(fresh);
    expect(await shelf.manuscript("other")).toBeNull();
  });

  it("[WRT1] who writes later on an earlier version is told, and overwrites nothing", async () => {
    const shelf = await open();
    await shelf.keepManuscript(ring, 0);
    await shelf.keepManuscript({ ...ring, title: "First tab" }, 1);
    const told = await shelf.keepManuscript({ ...ring, title: "Second tab" }, 1);
    expect(told).toMatchObject({ kind: "overtaken", by: { title: "First tab", version: 2 } });
    expect((await shelf.manuscript("ring"))?.title).toBe("First tab");
    expect(await shelf.keepManuscript(ring, 0)).toMatchObject({ kind: "overtaken" });
    // Once they have seen it they may write over it.
    expect(await shelf.keepManuscript({ ...ring, title: "Second tab" }, 2)).toMatchObject({ kind: "kept" });
  });

  it("[WRT1] one that was thrown away is kept again by a page that still writes it", async () => {
    const shelf = await open();
    await shelf.keepManuscript(ring, 0);
    await shelf.removeManuscript("ring");
    expect(await shelf.manuscripts()).toEqual([]);
    expect(await shelf.keepManuscript(ring, 1)).toMatchObject({ kind: "kept" });
    expect(await shelf.manuscripts()).toHaveLength(1);
  });

  it("[WRT1] have what is being typed beside them, each its own, until it is taken or they are thrown away", async () => {
    const shelf = await open();
    const typed = { field: "Do", text: "Shut the" };
    expect(await shelf.halfTyped("ring")).toBeNull();
    await shelf.keepHalfTyped("ring", { ...typed, text: "Shut" });
    await shelf.keepHalfTyped("ring", typed);
    await shelf.keepHalfTyped("other", { ...typed, text: "Open" });
    expect(await shelf.halfTyped("ring")).toEqual(typed);
    await shelf.keepHalfTyped("other", null);
    expect(await shelf.halfTyped("other")).toBeNull();
    await shelf.keepManuscript(ring, 0);
    await shelf.removeManuscript("ring");
    expect(await shelf.halfTyped("ring")).toBeNull();
  });

  it("[WRT1] call back after each change", async () => {
    const shelf = await open();
    const onChange = vi.fn();
    const end = shelf.watchManuscripts(onChange);
    await shelf.keepManuscript(ring, 0);
    await until(() => onChange.mock.calls.length > 0);
    end();
  });
});

describe("the manuscripts of a device", () => {
  it("[WRT1] are those of its database, for every page", async () => {
    const indexedDb = freshIndexedDb();
    const first = await openStore({ now: standing, indexedDb });
    expect(await first.hasManuscripts()).toBe(false);
    await (await first.manuscripts()).keepManuscript(ring, 0);
    const second = await openStore({ now: standing, indexedDb });
    expect(await second.hasManuscripts()).toBe(true);
    expect((await (await second.manuscripts()).manuscript("ring"))?.title).toBe("Ring");
    first.close();
    second.close();
  });

  it("[WRT1] a store that is gone says that nothing was kept, and why", async () => {
    const { database } = await openTab(freshIndexedDb());
    const shelf = openManuscripts(database, standing);
    database.close();
    expect(await shelf.keepManuscript(ring, 0)).toEqual({ kind: "not-kept", reason: "lost" });
  });

  it("[WRT1] without a database they last as long as the page", async () => {
    const parts = { indexedDB: undefined as never, IDBKeyRange: undefined as never };
    const store = await openStore({ now: standing, indexedDb: parts });
    const shelf = await store.manuscripts();
    expect(await shelf.keepManuscript(ring, 0)).toEqual({ kind: "kept", version: 1 });
    expect(await store.manuscripts()).toBe(shelf);
    store.close();
  });
});
