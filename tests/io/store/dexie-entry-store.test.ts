// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { Draft } from "../../../src/core/log/index.ts";
import { keyOf, mergeEntries, withStamp } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import {
  done,
  entryFrom,
  freshIndexedDb,
  note,
  onWriteTransactions,
  opened,
  openTab,
  otherWalk,
  source,
  start,
  textsOf,
  until,
  walk,
} from "./stand-ins.ts";

const sequencesOf = (entries: readonly { wire: { sequence: string } }[]) =>
  entries.map(({ wire }) => Number(wire.sequence));

describe("appending", () => {
  it("[LOG5] asks for strict durability and confirms only after the transaction is complete", async () => {
    const parts = freshIndexedDb();
    const happened: string[] = [];
    const stop = onWriteTransactions((transaction, options) => {
      happened.push(`begun ${options?.durability}`);
      transaction.addEventListener("complete", () => happened.push("complete"));
    });
    const { store } = await openTab(parts);
    happened.length = 0;

    await store.append(walk, [note("a"), note("b")]);
    happened.push("confirmed");

    stop();
    expect(happened).toEqual(["begun strict", "complete", "confirmed"]);
  });

  it("[LOG1] numbers each walk from 1 and stamps drafts in their order", async () => {
    const { store } = await openTab(freshIndexedDb());
    const first = await store.append(walk, [note("a"), note("b")]);
    const other = await store.append(otherWalk, [note("c")]);
    const second = await store.append(walk, [note("d")]);

    expect(sequencesOf([...first, ...second])).toEqual([1, 2, 3]);
    expect(sequencesOf(other)).toEqual([1]);
    expect(mergeEntries([...second, ...first].reverse()).ordered.map(keyOf)).toEqual(
      [...first, ...second].map(keyOf),
    );
    expect(first[0]?.wire.source).toBe(source);
  });

  it("keeps all drafts or none", async () => {
    const { store } = await openTab(freshIndexedDb());
    const wrong = { name: "note.made", data: {}, at: start, actor: "iv" } as unknown as Draft;
    await expect(store.append(walk, [note("a"), wrong])).rejects.toThrow("tetherline.note.made");
    expect((await store.read(walk, 0)).entries).toEqual([]);
    expect(sequencesOf(await store.append(walk, [note("b")]))).toEqual([1]);
  });

  it("goes on after the browser is opened again, whatever the clock says by then", async () => {
    const parts = freshIndexedDb();
    const { database, store } = await openTab(parts);
    const before = await store.append(walk, [note("a"), note("b")]);
    database.close();

    const dayBefore = (start - 86_400_000) as Instant;
    const again = await openTab(parts, () => dayBefore);
    const after = await again.store.append(walk, [note("c")]);
    expect(sequencesOf(after)).toEqual([3]);
    const { entries } = await again.store.read(walk, 0);
    expect(textsOf(mergeEntries(entries).ordered)).toEqual(["a", "b", "c"]);
    expect(entries.slice(0, 2).map(({ wire }) => wire)).toEqual(before.map(({ wire }) => wire));
  });

  it("[LOG1] shares one sequence without gaps between tabs that append at once", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 1, max: 3 })), { minLength: 1, maxLength: 20 }),
        async (calls) => {
          const parts = freshIndexedDb();
          const [one, two] = [await openTab(parts), await openTab(parts)];
          const made = await Promise.all(
            calls.map(([isFirst, count], call) =>
              (isFirst ? one : two).store.append(
                walk,
                Array.from({ length: count }, (_, index) => note(`${call}.${index}`)),
              ),
            ),
          );
          const total = calls.reduce((sum, [, count]) => sum + count, 0);
          const { entries } = await one.store.read(walk, 0);
          expect(sequencesOf(entries)).toEqual(Array.from({ length: total }, (_, index) => index + 1));
          expect(new Set(entries.map(({ hlc }) => hlc)).size).toBe(total);
          expect(new Set(made.flat().map(keyOf))).toEqual(new Set(entries.map(keyOf)));
          one.database.close();
          two.database.close();
        },
      ),
      { numRuns: 25 },
    );
  });

  it("gives up a database that was wiped under it, rather than give numbers out again", async () => {
    const parts = freshIndexedDb();
    const { database, store } = await openTab(parts);
    await store.append(walk, [note("a")]);
    await database.delete({ disableAutoOpen: false });
    await expect(store.append(walk, [note("b")])).rejects.toThrow("wiped");
  });
});

describe("taking in", () => {
  it("adds what is new once, and reports what conflicts", async () => {
    const { store } = await openTab(freshIndexedDb());
    const [a, b] = [entryFrom("/devices/ground", 1), entryFrom("/devices/ground", 2)];
    const forged = entryFrom("/devices/ground", 2, { data: { text: "another" } });

    expect(await store.takeIn([a, b, a])).toEqual({ added: 2, known: 1, restamped: [], conflicting: [] });
    expect(await store.takeIn([b, a])).toEqual({ added: 0, known: 2, restamped: [], conflicting: [] });
    expect(await store.takeIn([forged])).toEqual({
      added: 0,
      known: 0,
      restamped: [],
      conflicting: [forged],
    });
    expect(textsOf((await store.read(walk, 0)).entries)).toEqual(["note 1", "note 2"]);
  });

  it("[SEL8] knows an entry under another stamp, keeps its own, and says so", async () => {
    const { store } = await openTab(freshIndexedDb());
    const entry = entryFrom("/devices/ground", 1);
    await store.takeIn([entry]);
    const restamped = withStamp(entry, entryFrom("/devices/ground", 9).hlc);
    expect(await store.takeIn([restamped])).toEqual({
      added: 0,
      known: 1,
      restamped: [restamped],
      conflicting: [],
    });
    expect((await store.read(walk, 0)).entries.map(({ wire }) => wire)).toEqual([entry.wire]);
  });

  it("does the same with thousands at once", async () => {
    const { store } = await openTab(freshIndexedDb());
    const many = Array.from({ length: 1000 }, (_, index) => entryFrom("/devices/ground", index + 1));
    expect((await store.takeIn(many.slice(0, 700))).added).toBe(700);
    const forged = entryFrom("/devices/ground", 3, { data: { text: "another" } });
    expect(await store.takeIn([...many, forged])).toEqual({
      added: 300,
      known: 700,
      restamped: [],
      conflicting: [forged],
    });
  });

  it("takes an entry whose keys are in another order as known", async () => {
    const { store } = await openTab(freshIndexedDb());
    const entry = entryFrom("/devices/ground", 1);
    await store.takeIn([entry]);
    const turned = entryFrom("/devices/ground", 1, {
      ...Object.fromEntries(Object.entries(entry.wire).reverse()),
    });
    expect((await store.takeIn([turned])).known).toBe(1);
  });

  it("[LOG3] lets later entries of this device come after all that was taken in", async () => {
    const { store } = await openTab(freshIndexedDb());
    const ahead = entryFrom("/devices/ground", 3_600_000);
    await store.takeIn([ahead]);
    const [own] = await store.append(walk, [note("a")]);
    expect(own && own.hlc > ahead.hlc).toBe(true);
  });

  it("[LOG1] goes on counting after entries of its own that came back from elsewhere", async () => {
    const { store } = await openTab(freshIndexedDb());
    await store.takeIn([entryFrom(source, 7), entryFrom(source, 5)]);
    expect(sequencesOf(await store.append(walk, [note("a")]))).toEqual([8]);
  });

  it("[LOG5] is not stopped from appending by an entry with absurd numbers", async () => {
    const { store } = await openTab(freshIndexedDb());
    await store.takeIn([
      entryFrom(source, 1, { sequence: "99999999999999999999", hlc: "999999999999999-ffff" }),
      entryFrom(source, 2, { id: "0000000009" }),
    ]);
    expect(sequencesOf(await store.append(walk, [note("a")]))).toEqual([10]);
  });
});

describe("reading and watching", () => {
  it("reads on from an offset", async () => {
    const { store } = await openTab(freshIndexedDb());
    await store.append(walk, [note("a")]);
    const first = await store.read(walk, 0);
    await store.append(otherWalk, [note("x")]);
    await store.append(walk, [note("b")]);
    const second = await store.read(walk, first.offset);
    expect(textsOf(second.entries)).toEqual(["b"]);
    const end = { entries: [], offset: second.offset, edition: 0 };
    expect(await store.read(walk, second.offset)).toEqual(end);
  });

  it("calls back for what another tab wrote, until it is told to stop", async () => {
    const parts = freshIndexedDb();
    const [one, two] = [await openTab(parts), await openTab(parts)];
    const onChange = vi.fn();
    const end = two.store.watch(walk, onChange);
    await until(() => onChange.mock.calls.length > 0);
    onChange.mockClear();

    await one.store.append(walk, [note("a")]);
    await until(() => onChange.mock.calls.length > 0);
    expect(textsOf((await two.store.read(walk, 0)).entries)).toEqual(["a"]);

    end();
    onChange.mockClear();
    await one.store.append(walk, [note("b")]);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(onChange).not.toHaveBeenCalled();
  });

  it("does not call back for another walk", async () => {
    const { store } = await openTab(freshIndexedDb());
    const [here, there] = [vi.fn(), vi.fn()];
    store.watch(walk, here);
    store.watch(otherWalk, there);
    await until(() => here.mock.calls.length > 0 && there.mock.calls.length > 0);
    here.mockClear();
    there.mockClear();
    await store.append(otherWalk, [note("a")]);
    await until(() => there.mock.calls.length > 0);
    expect(here).not.toHaveBeenCalled();
  });
});

describe("the list of walks", () => {
  it("[WLK1] shows each walk's opening and phase, the latest first", async () => {
    const { store } = await openTab(freshIndexedDb());
    await store.append(walk, [
      opened("Ring exchange"),
      { name: "clock.started", data: {}, at: start, actor: "iv" },
    ]);
    await store.append(otherWalk, [opened("Pool", "rehearsal"), note("later", start + 1000)]);

    expect(await store.walks()).toEqual([
      {
        walk: otherWalk,
        procedure: "ring-exchange",
        revision: "B",
        title: "Pool",
        mode: "rehearsal",
        openedAt: start,
        phase: "prepared",
        lastAt: start + 1000,
        entries: 2,
      },
      expect.objectContaining({ walk, title: "Ring exchange", mode: "live", phase: "running", entries: 2 }),
    ]);
  });

  it("[LOG3] does not depend on the order in which entries came, strikes and strikes of strikes included", async () => {
    const { store } = await openTab(freshIndexedDb());
    const drafts: Draft[] = [
      opened("Ring exchange"),
      { name: "clock.started", data: {}, at: start, actor: "iv" },
      { name: "hold.called", data: {}, at: start, actor: "iv" },
      { name: "hold.lifted", data: {}, at: start, actor: "iv" },
      { name: "walk.closed", data: { end: "complete" }, at: start, actor: "iv" },
      { name: "entry.struck", data: { source, id: "0000000005" }, at: start, actor: "iv" },
      { name: "entry.struck", data: { source, id: "0000000004" }, at: start, actor: "iv" },
      { name: "entry.struck", data: { source, id: "0000000007" }, at: start, actor: "iv" },
      done("one"),
    ];
    const entries = await store.append(walk, drafts);
    const [card] = await store.walks();
    expect(card?.phase).toBe("running");

    await fc.assert(
      fc.asyncProperty(
        fc.shuffledSubarray([...entries], { minLength: entries.length }),
        fc.integer({ min: 1, max: 4 }),
        async (shuffled, size) => {
          const tab = await openTab(freshIndexedDb());
          for (let at = 0; at < shuffled.length; at += size)
            await tab.store.takeIn(shuffled.slice(at, at + size));
          expect(await tab.store.walks()).toEqual([card]);
          tab.database.close();
        },
      ),
      { numRuns: 25 },
    );
  });

  it("removes a walk whole, and gives none of its numbers out again", async () => {
    const { store } = await openTab(freshIndexedDb());
    const removed = await store.append(walk, [note("a"), note("b")]);
    await store.append(otherWalk, [note("c")]);
    const onChange = vi.fn();
    store.watchWalks(onChange);
    await until(() => onChange.mock.calls.length > 0);
    onChange.mockClear();

    expect(await store.removeWalk(walk)).toBe(true);
    await until(() => onChange.mock.calls.length > 0);
    expect((await store.walks()).map((card) => card.walk)).toEqual([otherWalk]);
    expect((await store.read(walk, 0)).entries).toEqual([]);
    expect(sequencesOf(await store.append(walk, [note("d")]))).toEqual([3]);
    expect((await store.takeIn(removed)).added).toBe(2);
  });
});
