// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { WalkStore } from "../../../src/io/store/index.ts";
import { MemoryEntryStore } from "../../../src/io/store/index.ts";
import {
  entryFrom,
  freshIndexedDb,
  note,
  opened,
  openTab,
  otherWalk,
  source,
  standing,
  until,
  walk,
} from "./stand-ins.ts";

type Operation = (store: WalkStore) => Promise<unknown>;

const walks = fc.constantFrom(walk, otherWalk);
const foreign = fc
  .tuple(
    fc.integer({ min: 1, max: 4 }),
    walks,
    fc.constantFrom("x", "y"),
    fc.constantFrom(source, "/devices/ground"),
  )
  .map(([number, subject, text, from]) => entryFrom(from, number, { subject, data: { text } }));
const operations: fc.Arbitrary<Operation> = fc.oneof(
  fc.tuple(walks, fc.integer({ min: 0, max: 3 })).map(
    ([of, count]): Operation =>
      (store) =>
        store.append(
          of,
          Array.from({ length: count }, (_, index) => (index === 1 ? opened("One") : note(`${index}`))),
        ),
  ),
  fc.array(foreign, { maxLength: 4 }).map(
    (entries): Operation =>
      (store) =>
        store.takeIn(entries),
  ),
  walks.map(
    (of): Operation =>
      (store) =>
        store.removeWalk(of),
  ),
);

describe("a store in memory", () => {
  it("answers as the one on disk does, whatever is asked", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(operations, { maxLength: 12 }), async (asked) => {
        const { database, store: disk } = await openTab(freshIndexedDb());
        const memory = new MemoryEntryStore(source, standing);
        for (const operation of asked) {
          // Numbers given out again after a removal would show as a ConstraintError on one side only.
          const [onDisk, inMemory] = await Promise.allSettled([operation(disk), operation(memory)]);
          expect(inMemory.status).toBe(onDisk.status);
          if (inMemory.status === "fulfilled" && onDisk.status === "fulfilled") {
            expect(inMemory.value).toEqual(onDisk.value);
          }
          expect(await memory.walks()).toEqual(await disk.walks());
          for (const of of [walk, otherWalk]) {
            const [kept, written] = [await memory.read(of, 0), await disk.read(of, 0)];
            expect(kept.entries).toEqual(written.entries);
            expect((await memory.read(of, kept.offset)).entries).toEqual([]);
          }
        }
        database.close();
      }),
      { numRuns: 60 },
    );
  });

  it("calls back for its own walk only, until it is told to stop", async () => {
    const store = new MemoryEntryStore(source, standing);
    const [here, there, list] = [vi.fn(), vi.fn(), vi.fn()];
    const end = store.watch(walk, here);
    store.watch(otherWalk, there);
    store.watchWalks(list);
    await store.append(walk, [note("a")]);
    await until(() => here.mock.calls.length > 0 && list.mock.calls.length > 0);
    expect(there).not.toHaveBeenCalled();
    end();
    await store.append(walk, [note("b")]);
    await until(() => list.mock.calls.length > 1);
    expect(here).toHaveBeenCalledOnce();
  });
});
