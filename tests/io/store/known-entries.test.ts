// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it } from "vitest";
import { joining } from "./link-stand-ins.ts";
import { entryFrom, freshIndexedDb, note, openTab, textsOf, walk } from "./stand-ins.ts";

describe("an entry that somebody holds", () => {
  it("is the very object, however it came to be in the store and however often it is read", async () => {
    const { store } = await openTab(freshIndexedDb());
    const made = await store.append(walk, [note("a"), note("b")]);
    const taken = [entryFrom("/devices/ground", 1), entryFrom("/devices/ground", 2)];
    await store.takeIn(taken);
    await store.links.join(joining);
    const heard = entryFrom("/devices/ground", 3);
    await store.links.takeIn(walk, [heard], { epoch: "one", offset: 1 });
    const { entries } = await store.read(walk, 0);
    const all = [...made, ...taken, heard];
    expect(entries).toHaveLength(all.length);
    for (const [index, entry] of all.entries()) expect(entries[index]).toBe(entry);
    const again = (await store.read(walk, 0)).entries;
    for (const [index, entry] of entries.entries()) expect(again[index]).toBe(entry);
  });

  it("is what the database holds, though a transaction failed whose offsets were given again", async () => {
    const parts = freshIndexedDb();
    const { database, store } = await openTab(parts);
    const { put } = database.walks;
    // The entries are added by then, and the transaction fails all the same.
    database.walks.put = (() =>
      database.entries.count().then(() => {
        throw new DOMException("no room", "QuotaExceededError");
      })) as typeof put;
    await expect(store.append(walk, [note("lost")])).rejects.toThrow("no room");
    database.walks.put = put;
    await (await openTab(parts)).store.append(walk, [note("kept in another tab")]);
    expect(textsOf((await store.read(walk, 0)).entries)).toEqual(["kept in another tab"]);
  });
});
