// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import fc from "fast-check";
import { expect, it } from "vitest";
import type { Settled } from "../../../src/core/link/index.ts";
import { mergeEntries } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { WalkStore } from "../../../src/io/store/index.ts";
import { MemoryEntryStore } from "../../../src/io/store/index.ts";
import { accepted, at, clock, ground, joining, refused, restamped } from "./link-stand-ins.ts";
import { entryFrom, freshIndexedDb, note, openTab, source, start, walk } from "./stand-ins.ts";

/** A store and its clock. */
interface Clocked {
  readonly store: WalkStore;
  time: number;
}

type Operation = (one: Clocked) => Promise<unknown>;

const theirs = fc
  .tuple(
    fc.constantFrom(source, ground),
    fc.integer({ min: 1, max: 5 }),
    fc.constantFrom("x", "y"),
    fc.constantFrom(0, 90_000),
  )
  .map(([from, number, text, ahead]) =>
    restamped(entryFrom(from, number, { data: { text } }), start + ahead + number),
  );
const cursors = fc
  .tuple(fc.integer({ min: 0, max: 9 }), fc.constantFrom("one", "two"))
  .map(([offset, epoch]) => at(offset, epoch));
const answers = fc.array(fc.constantFrom("accepted", "role", "conflict", "ahead"), {
  minLength: 3,
  maxLength: 3,
});

const append: Operation = ({ store }) => store.append(walk, [note("a"), note("b")]);
const setClock =
  (offset: number, scope: "own" | "every"): Operation =>
  ({ store }) =>
    store.links.setClock(walk, clock(offset), scope);
const removeWalk: Operation = ({ store }) => store.removeWalk(walk);

const operations: fc.Arbitrary<Operation> = fc.oneof(
  fc.constant(append),
  fc.array(theirs, { maxLength: 3 }).map(
    (entries): Operation =>
      ({ store }) =>
        store.takeIn(entries),
  ),
  fc.constantFrom("hub-1", "hub-2").map(
    (hub): Operation =>
      ({ store }) =>
        store.links.join({ ...joining, hub }),
  ),
  fc.tuple(fc.array(theirs, { maxLength: 3 }), cursors).map(
    ([entries, cursor]): Operation =>
      ({ store }) =>
        store.links.takeIn(walk, entries, cursor),
  ),
  fc.tuple(answers, fc.boolean()).map(
    ([reasons, isLate]): Operation =>
      async ({ store }) => {
        const { entries, round } = await store.links.outbox(walk, 3);
        const settled = entries.map((entry, index): Settled => {
          const reason = reasons[index] ?? "accepted";
          return reason === "role" || reason === "conflict" || reason === "ahead"
            ? refused(entry, reason)
            : accepted(entry);
        });
        if (isLate) await store.links.takeIn(walk, [], at(0, "three"));
        return store.links.settle(walk, settled, round);
      },
  ),
  fc
    .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.constantFrom("own" as const, "every" as const))
    .map(([offset, scope]) => setClock(offset, scope)),
  fc.integer({ min: -200_000, max: 200_000 }).map(
    (by): Operation =>
      async (one) => {
        one.time = start + by;
      },
  ),
  fc.constant<Operation>(({ store }) => store.links.leave(walk)),
  fc.constant(removeWalk),
);

/** One that failed once: the time that a hub would refuse went with the walk, and was followed again in memory only. */
const refusedTimeGone = [append, removeWalk, setClock(-90_000, "every"), append, removeWalk, append];

/** What an operation came to: its answer, or the name of its error. */
async function outcomeOf(operation: Operation, one: Clocked): Promise<unknown> {
  try {
    return await operation(one);
  } catch (error) {
    return error instanceof Error ? error.name : error;
  }
}

async function contentsOf({ store }: Clocked) {
  const { links } = store;
  const row = await links.get(walk);
  const { entries, edition } = await store.read(walk, 0);
  return {
    entries: mergeEntries(entries).ordered,
    edition,
    outbox: await links.outbox(walk, 100),
    unsent: await links.unsent(walk),
    aside: (await links.aside(walk)).map(({ wire, reason }) => ({ wire, reason })),
    // Offsets are each store's own.
    link: row && { ...row, pushed: null },
    walks: await store.walks(),
  };
}

it("[LINK] links are kept in memory as they are on disk, whatever is done with them", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(operations, { maxLength: 14 }), async (asked) => {
      const disk: Clocked = { time: start, store: await diskStore(() => disk.time as Instant) };
      const memory: Clocked = {
        time: start,
        store: new MemoryEntryStore(source, () => memory.time as Instant),
      };
      for (const operation of asked) {
        expect(await outcomeOf(operation, memory)).toEqual(await outcomeOf(operation, disk));
        expect(await contentsOf(memory)).toEqual(await contentsOf(disk));
      }
    }),
    { numRuns: 150, examples: [[refusedTimeGone]] },
  );
});

async function diskStore(now: () => Instant): Promise<WalkStore> {
  return (await openTab(freshIndexedDb(), now)).store;
}
