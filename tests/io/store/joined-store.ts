import type { Settled } from "../../../src/core/link/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { mergeEntries } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { NewLink, WalkStore } from "../../../src/io/store/index.ts";
import { FallbackEntryStore, MemoryEntryStore } from "../../../src/io/store/index.ts";
import { at, joining } from "./link-stand-ins.ts";
import { failWrites, freshIndexedDb, note, openTab, otherWalk, source, start, walk } from "./stand-ins.ts";

const memorySource = `${source}/memory-k7f3`;

type Opened = (now: () => Instant) => Promise<WalkStore>;

/** Every kind of store. */
export const KINDS: readonly (readonly [kind: string, open: Opened])[] = [
  ["on disk", async (now) => (await openTab(freshIndexedDb(), now)).store],
  ["in memory", async (now) => new MemoryEntryStore(source, now)],
  [
    "on disk as long as that works",
    async (now) => {
      const { store } = await openTab(freshIndexedDb(), now);
      return new FallbackEntryStore({ durable: store, memorySource, now });
    },
  ],
  ["of a device without a disk", async (now) => new FallbackEntryStore({ durable: null, memorySource, now })],
  [
    "whose disk is full",
    async (now) => {
      const { database, store } = await openTab(freshIndexedDb(), now);
      const log = new FallbackEntryStore({ durable: store, memorySource, now });
      failWrites(database, "QuotaExceededError");
      await log.append(otherWalk, [note("no room for this")]);
      return log;
    },
  ],
];

/** A walk joined in a store, of which nothing was read yet but how far it goes. */
export async function joinedStore(open: Opened, more: Partial<NewLink> = {}) {
  let time: number = start;
  const now = () => time as Instant;
  const store = await open(now);
  await store.links.join({ ...joining, ...more });
  const { links } = store;
  await links.takeIn(walk, [], at(0));
  const outbox = async () => (await links.outbox(walk, 100)).entries;
  /** Offers all that waits and has the hub answer so. */
  const settle = async (answer: (entry: Entry, index: number) => Settled) => {
    const { entries, round } = await links.outbox(walk, 100);
    return links.settle(walk, entries.map(answer), round);
  };
  return {
    store,
    links,
    outbox,
    settle,
    append: (...texts: readonly string[]) =>
      store.append(
        walk,
        texts.map((text) => note(text)),
      ),
    here: async () => mergeEntries((await store.read(walk, 0)).entries).ordered,
    edition: async () => (await store.read(walk, 0)).edition,
    notices: async () =>
      ((await links.get(walk))?.notices ?? []).map(({ kind, count, reason }) => [kind, count, reason]),
    setTime: (ms: number) => {
      time = ms;
    },
  };
}
