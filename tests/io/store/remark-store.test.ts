// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it, vi } from "vitest";
import type { Remark } from "../../../src/core/remarks/index.ts";
import { REMARK_FORMAT } from "../../../src/core/remarks/index.ts";
import type { RemarkStore } from "../../../src/io/store/index.ts";
import { DexieRemarkStore, MemoryRemarkStore, openStore } from "../../../src/io/store/index.ts";
import { freshIndexedDb, openTab, procedureText, standing, until } from "./stand-ins.ts";

const remark = (id: string, more: Partial<Remark> = {}): Remark => ({
  format: REMARK_FORMAT,
  id,
  procedure: "ring",
  revision: null,
  text: null,
  step: null,
  by: { name: "K. Lind", role: "IV" },
  at: "2031-04-02T09:00:00Z",
  kind: "comment",
  says: "Too short",
  to: null,
  ...more,
});

const stores: readonly [string, () => Promise<RemarkStore>][] = [
  ["on disk", async () => new DexieRemarkStore((await openTab(freshIndexedDb())).database)],
  ["in memory", async () => new MemoryRemarkStore()],
];

describe.each(stores)("remarks %s", (_, open) => {
  it("[WRT10] are kept once each, by procedure, and one that differs is kept beside the other", async () => {
    const store = await open();
    expect(await store.addRemarks([remark("a"), remark("b"), remark("a")])).toEqual({
      kind: "kept",
      added: 2,
      known: 1,
    });
    expect(await store.addRemarks([remark("a"), remark("c", { procedure: "another" })])).toEqual({
      kind: "kept",
      added: 1,
      known: 1,
    });
    await store.addRemarks([remark("b", { says: "Too long" })]);
    const kept = (await store.remarks("ring")).map(({ id, says }) => `${id} ${says}`).sort();
    expect(kept).toEqual(["a Too short", "b Too long", "b Too short"]);
    expect(await store.remarks("nothing")).toEqual([]);
  });

  it("[WRT10] call back after each addition until that is ended", async () => {
    const store = await open();
    const onChange = vi.fn();
    const end = store.watchRemarks(onChange);
    await store.addRemarks([remark("a")]);
    await until(() => onChange.mock.calls.length > 0);
    end();
    await new Promise((resolve) => setTimeout(resolve, 20));
    const before = onChange.mock.calls.length;
    await store.addRemarks([remark("b")]);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(onChange.mock.calls.length).toBe(before);
  });
});

it("[WRT10] remarks stay when their procedure is taken off the shelf, and after a week", async () => {
  const indexedDb = freshIndexedDb();
  const first = await openStore({ now: standing, indexedDb });
  await first.shelf.addProcedure(procedureText("ring"));
  await first.remarks.addRemarks([remark("a")]);
  await first.shelf.removeProcedure("ring");
  first.close();
  const later = await openStore({ now: standing, indexedDb });
  expect(await later.remarks.remarks("ring")).toEqual([remark("a")]);
  later.close();
});
