import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { keyOf, mergeEntries, writeLines } from "../../../src/core/log/index.ts";
import type { Verification } from "../../../src/core/seal/index.ts";
import { verifyLog } from "../../../src/core/seal/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { exportWalk, importWalkLog, walkInPieces } from "../../../src/io/backup/index.ts";
import { platformRandomBytes } from "../../../src/io/device/index.ts";
import type { WalkStore } from "../../../src/io/store/index.ts";
import { FallbackEntryStore, MemoryEntryStore, openStore } from "../../../src/io/store/index.ts";
import type { SealPen } from "../../../src/io/store/seal-pen.ts";
import { sealPen } from "../../../src/io/store/seal-pen.ts";
import { keyPlaceInMemory } from "../../../src/io/store/signing-key.ts";
import { accepted, at, clock, ground, joining, refused } from "./link-stand-ins.ts";
import {
  entryFrom,
  failWrites,
  freshIndexedDb,
  note,
  openTab,
  otherWalk,
  source,
  standing,
  start,
  until,
  walk,
} from "./stand-ins.ts";

const memorySource = `${source}/memory-k7f3`;

async function newPen(): Promise<SealPen> {
  const pen = await sealPen(keyPlaceInMemory(), {
    subtle: globalThis.crypto.subtle,
    random: platformRandomBytes,
    isShell: false,
  });
  if (!pen) throw new Error("this platform has no Ed25519");
  return pen;
}

/** A pen that does not get to sealing: the page is gone before. */
const unfinished = (pen: SealPen): SealPen => ({ ...pen, sealed: () => new Promise(() => {}) });

const entriesOf = async (store: Pick<WalkStore, "read">, of: WalkId = walk): Promise<readonly Entry[]> =>
  (await store.read(of, 0)).entries;

function verified(entries: readonly Entry[]): Verification {
  const found = verifyLog(entries, []);
  if (!found) throw new Error("nothing to verify");
  return found;
}

/** What is wrong with a log, besides that no hub vouches for its devices. */
const faults = (entries: readonly Entry[]) =>
  verified(entries).findings.filter(({ kind }) => kind !== "nobody-vouches");

/** Expects every entry of this device to be sealed and in its chain. */
function expectSealed(entries: readonly Entry[]): void {
  const own = entries.filter(({ wire }) => wire.source.startsWith(source));
  expect(own.length).toBeGreaterThan(0);
  expect(faults(own)).toEqual([]);
  for (const one of verified(own).sources)
    expect([one.source, one.sealed]).toEqual([one.source, one.entries]);
}

const OPENED: readonly (readonly [kind: string, open: (pen: SealPen) => Promise<WalkStore>])[] = [
  ["on disk", async (pen) => (await openTab(freshIndexedDb(), standing, async () => pen)).store],
  ["in memory", async (pen) => new MemoryEntryStore(source, standing, 0, async () => pen)],
  [
    "of a device",
    async (pen) => {
      const { store } = await openTab(freshIndexedDb(), standing, async () => pen);
      return new FallbackEntryStore({
        durable: store,
        memorySource,
        now: standing,
        findPen: async () => pen,
      });
    },
  ],
];

describe.each(OPENED)("a store %s", (_, open) => {
  it("[SEL2] chains each entry within its commit, names the key once and seals after it", async () => {
    const pen = await newPen();
    const store = await open(pen);
    const [first, second] = await store.append(walk, [note("one"), note("two")]);
    const [third] = await store.append(walk, [note("three")]);
    expect([first, second, third].map((entry) => entry?.wire["sealkey"])).toEqual([
      pen.publicKey,
      undefined,
      undefined,
    ]);
    expect([first, second, third].map((entry) => typeof entry?.wire["prior"])).toEqual([
      "undefined",
      "string",
      "string",
    ]);
    expect(first?.wire["seal"]).toBeUndefined();
    await store.seal(walk);
    expectSealed(await entriesOf(store));
    await store.append(otherWalk, [note("elsewhere")]);
    await store.seal(otherWalk);
    expectSealed(await entriesOf(store, otherWalk));
  });

  it("[SEL3] sends nothing that waits for its seal, and what cannot be sealed unsealed", async () => {
    const pen = await newPen();
    let isBroken = false;
    const store = await open({ ...pen, sealed: async (entry) => (isBroken ? null : pen.sealed(entry)) });
    await store.links.join({ ...joining, deviceKey: pen.publicKey });
    await store.append(walk, [note("one")]);
    await store.seal(walk);
    isBroken = true;
    await store.append(walk, [note("two")]);
    await store.seal(walk);
    isBroken = false;
    await store.append(walk, [note("three")]);
    await store.seal(walk);
    const { entries } = await store.links.outbox(walk, 10);
    expect(entries.map(({ wire }) => wire["seal"] !== undefined)).toEqual([true, false, true]);
    expect(faults(entries).map(({ kind }) => kind)).toEqual(["unsealed"]);
  });

  it("[SEL3] goes unsealed where its hub ties the device to another key", async () => {
    const store = await open(await newPen());
    await store.links.join({ ...joining, deviceKey: "another" });
    const [entry] = await store.append(walk, [note("one")]);
    expect(entry?.wire).not.toHaveProperty("sealkey");
    await store.seal(walk);
    expect((await store.links.outbox(walk, 10)).entries).toHaveLength(1);
  });

  it("[SEL3] goes by the key that the hub ties the device to now, however often that is another one", async () => {
    const pen = await newPen();
    const store = await open(pen);
    const isChained = async (text: string) => {
      const [entry] = await store.append(walk, [note(text)]);
      return entry?.wire["prior"] !== undefined || entry?.wire["sealkey"] !== undefined;
    };
    expect(await isChained("before it is linked")).toBe(true);
    await store.links.join({ ...joining, deviceKey: "another" });
    expect(await isChained("tied to another key")).toBe(false);
    await store.links.join({ ...joining, deviceKey: pen.publicKey });
    expect(await isChained("tied to its own")).toBe(true);
    await store.links.change(walk, (row) => ({ ...row, deviceKey: "another" }));
    expect(await isChained("tied anew")).toBe(false);
    await store.links.leave(walk);
    expect(await isChained("left")).toBe(true);
    await store.links.join({ ...joining, deviceKey: "another" });
    await store.removeWalk(walk);
    expect(await isChained("removed")).toBe(true);
  });

  it("[SEL2] goes on behind entries that went unsealed, naming the key again", async () => {
    const pen = await newPen();
    const store = await open(pen);
    await store.takeIn([entryFrom(source, 1), entryFrom(source, 2)]);
    await store.append(walk, [note("three")]);
    await store.append(walk, [note("four")]);
    await store.seal(walk);
    const entries = await entriesOf(store);
    expect(faults(entries)).toEqual([{ kind: "unsealed", source, number: 1 }]);
    expect(verified(entries).sources[0]).toMatchObject({ entries: 4, sealed: 2 });
  });

  it("[SEL1] keeps its seals when entries are stamped anew, by the hub's clock or by its word", async () => {
    const pen = await newPen();
    const store = await open(pen);
    await store.links.join({ ...joining, deviceKey: pen.publicKey });
    await store.append(walk, [note("one"), note("two"), note("three")]);
    await store.links.setClock(walk, clock(-3_600_000), "own");
    await store.seal(walk);
    await store.links.setClock(walk, clock(-7_200_000), "own");
    await store.append(walk, [note("four")]);
    await store.seal(walk);
    const { entries, round } = await store.links.outbox(walk, 10);
    const anew = `${String(start - 8_000_000).padStart(15, "0")}-0000` as Entry["hlc"];
    await store.links.settle(
      walk,
      entries.map((entry, index) => accepted(entry, "known", index === 1 ? anew : undefined)),
      round,
    );
    const all = await entriesOf(store);
    expect(all.filter(({ wire }) => wire.hlcmade !== undefined).length).toBeGreaterThan(2);
    expectSealed(all);
  });

  it("[SEL8] seals what is made again when the hub has other entries under its numbers, which are of the same chain", async () => {
    const pen = await newPen();
    const before = new MemoryEntryStore(source, standing, 0, async () => pen);
    await before.append(walk, [note("one"), note("two"), note("three")]);
    await before.seal(walk);
    const there = await entriesOf(before);
    // The device comes back from a copy that has the first alone, and goes on.
    const store = await open(pen);
    await store.links.join({ ...joining, deviceKey: pen.publicKey });
    await store.takeIn(there.slice(0, 1));
    await store.append(walk, [note("two again"), note("three again")]);
    await store.seal(walk);
    const { entries, round } = await store.links.outbox(walk, 10);
    await store.links.settle(
      walk,
      entries.map((entry, index) => (index === 0 ? accepted(entry, "known") : refused(entry, "conflict"))),
      round,
    );
    await store.links.takeIn(walk, there, at(3));
    await store.append(walk, [note("four")]);
    await store.seal(walk);
    const all = await entriesOf(store);
    expect(all.map(({ wire }) => wire.id).sort()).toEqual(
      [1, 2, 3, 4, 5, 6].map((number) => String(number).padStart(10, "0")),
    );
    expectSealed(all);
  });

  it("[SEL8] goes on in its chain after a walk was taken off, and brought back or not", async () => {
    const store = await open(await newPen());
    await store.append(walk, [note("one"), note("two")]);
    await store.seal(walk);
    const out = await entriesOf(store);
    await store.removeWalk(walk);
    await store.append(walk, [note("three")]);
    await store.seal(walk);
    const [third] = await entriesOf(store);
    await store.removeWalk(walk);
    await store.takeIn(out);
    await store.append(walk, [note("four")]);
    await store.seal(walk);
    expectSealed([...(await entriesOf(store)), ...(third ? [third] : [])]);
  });

  it("[SEL1] makes texts well-formed, which could not be sealed otherwise", async () => {
    const store = await open(await newPen());
    await store.append(walk, [note("half \ud83d of it"), note("whole \ud83d\ude00")]);
    await store.seal(walk);
    const entries = await entriesOf(store);
    expect(entries.map(({ wire }) => wire.data)).toEqual([
      { text: "half \ufffd of it" },
      { text: "whole \ud83d\ude00" },
    ]);
    expectSealed(entries);
  });
});

/** A log of another device, as a page left it that was gone before it could seal the second entry, and as it was at the end. */
async function leftAndSealed() {
  const pen = await newPen();
  const elsewhere = new MemoryEntryStore("/devices/elsewhere", standing, 0, async () => pen);
  await elsewhere.append(walk, [note("one"), note("two"), note("three")]);
  const sealed = (await elsewhere.seal(walk)) as readonly Entry[];
  const left = sealed.map((entry, index): Entry => {
    const { seal: _, ...wire } = entry.wire;
    return index === 1 ? { ...entry, wire } : entry;
  });
  return { left, sealed };
}

describe.each(OPENED)("a log that is taken into a store %s", (_, open) => {
  it("[SEL8] brings the seals that fit for entries that have none here, and no others", async () => {
    const { left, sealed } = await leftAndSealed();
    const store = await open(await newPen());
    await importWalkLog(store, writeLines(left));
    expect(faults(await entriesOf(store)).map(({ kind }) => kind)).toEqual(["unsealed"]);

    const spoiled = sealed.map((entry, index) =>
      index === 1 ? { ...entry, wire: { ...entry.wire, seal: sealed[0]?.wire["seal"] } } : entry,
    );
    await importWalkLog(store, writeLines(spoiled));
    // Without the first entry nothing says by which key.
    await importWalkLog(store, writeLines(sealed.slice(1)));
    expect(await entriesOf(store)).toEqual(left);

    expect(await importWalkLog(store, writeLines(sealed))).toMatchObject({ added: 0, known: 3 });
    expect(faults(await entriesOf(store))).toEqual([]);
    expect(verified(await entriesOf(store)).sources[0]).toMatchObject({ entries: 3, sealed: 3 });
    await importWalkLog(store, writeLines(left));
    expect(faults(await entriesOf(store))).toEqual([]);
  });

  it("[SEL8] brings a device’s own seals back, which a page of it did not get to", async () => {
    const pen = await newPen();
    const store = await open(unfinished(pen));
    await store.append(walk, [note("one"), note("two")]);
    const waiting = await entriesOf(store);
    const sealed = await Promise.all(waiting.map(async (entry) => (await pen.sealed(entry)) ?? entry));
    await importWalkLog(store, writeLines(sealed));
    expectSealed(await entriesOf(store));
  });
});

describe("a device", () => {
  it("[SEL3] seals at the next start what a page left unsealed, before anything is sent", async () => {
    const parts = freshIndexedDb();
    const pen = await newPen();
    const crashed = await openTab(parts, standing, async () => unfinished(pen));
    await crashed.store.links.join({ ...joining, deviceKey: pen.publicKey });
    await crashed.store.append(walk, [note("one"), note("two")]);
    expect((await crashed.store.links.outbox(walk, 10)).entries).toEqual([]);
    expect(await crashed.store.links.unsent(walk)).toBe(2);
    crashed.database.close();
    const { store } = await openTab(parts, standing, async () => pen);
    const log = new FallbackEntryStore({
      durable: store,
      memorySource,
      now: standing,
      findPen: async () => pen,
    });
    const { entries } = await log.links.outbox(walk, 10);
    expect(entries).toHaveLength(2);
    expectSealed(entries);
  });

  it("[SEL3] confirms what is entered while its seal is not to be had, and never delays it", async () => {
    const pen = await newPen();
    const { store } = await openTab(freshIndexedDb(), standing, async () => unfinished(pen));
    const log = new FallbackEntryStore({ durable: store, memorySource, now: standing });
    for (const text of ["one", "two", "three"]) expect(await log.append(walk, [note(text)])).toHaveLength(1);
  });

  it("[SEL2] has one chain for all of its tabs", async () => {
    const parts = freshIndexedDb();
    const pen = await newPen();
    const tabs = await Promise.all([1, 2, 3].map(() => openTab(parts, standing, async () => pen)));
    await Promise.all(
      Array.from({ length: 12 }, (_, index) => {
        const store = tabs[index % 3]?.store;
        return store?.append(walk, [note(`note ${index}`)]).then(() => store.seal(walk));
      }),
    );
    const entries = tabs[0] ? await entriesOf(tabs[0].store) : [];
    expect(entries).toHaveLength(12);
    expectSealed(entries);
  });

  it("[SEL2] has a chain of its own for what it enters in memory while its disk is full, and brings both to disk", async () => {
    const pen = await newPen();
    const { database, store } = await openTab(freshIndexedDb(), standing, async () => pen);
    const findPen = async () => pen;
    const log = new FallbackEntryStore({ durable: store, memorySource, now: standing, findPen });
    await log.append(walk, [note("one")]);
    const full = failWrites(database, "QuotaExceededError");
    await log.append(walk, [note("two")]);
    await log.append(walk, [note("three")]);
    await log.seal(walk);
    expectSealed(await entriesOf(log));
    full.mend();
    expect((await log.retry()).kind).toBe("durable");
    await log.append(walk, [note("four")]);
    await log.seal(walk);
    expectSealed(await entriesOf(store));
    expectSealed(await entriesOf(log));
    expect(new Set((await entriesOf(store)).map(({ wire }) => wire.source)).size).toBe(2);
  });

  it("[SEL2] writes its key's seals into what it exports", async () => {
    const device = await openStore({ now: standing, indexedDb: freshIndexedDb() });
    await device.log.append(walk, [note("one"), note("two")]);
    const entries = (await exportWalk(device.log, walk)).trim().split("\n");
    expect(entries.every((line) => "seal" in JSON.parse(line))).toBe(true);
    expect(JSON.parse(entries[0] ?? "")["sealkey"]).toBe((await device.key()).key?.publicKey);
    device.close();
  });

  it("[SEL2] exports what was entered after it had sealed with its seal too", async () => {
    const pen = await newPen();
    const { store } = await openTab(freshIndexedDb(), standing, async () => pen);
    await store.append(walk, [note("one")]);
    let seals = 0;
    const exported = await exportWalk(
      {
        seal: async (of) => {
          const sealed = await store.seal(of);
          seals += 1;
          if (seals === 1) await store.append(walk, [note("meanwhile")]);
          return sealed;
        },
        read: (...of) => store.read(...of),
      },
      walk,
    );
    const wires = exported
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(wires).toHaveLength(2);
    expect(wires.every((wire) => "seal" in wire)).toBe(true);
  });

  it("[SEL2] exports the seals that another tab made, though this one holds the entries without them", async () => {
    const pen = await newPen();
    const parts = freshIndexedDb();
    const { store } = await openTab(parts, standing, async () => pen);
    const made = await store.append(walk, [note("one"), note("two")]);
    await (await openTab(parts, standing, async () => pen)).store.seal(walk);
    expectSealed(await entriesOf(store));
    const exported = await exportWalk(store, walk);
    for await (const piece of walkInPieces(store, walk)) expect(piece).toBe(exported);
    expect(made.every(({ wire }) => wire["seal"] === undefined)).toBe(true);
  });

  it("[SEL3] goes unsealed outside of a secure context", async () => {
    const device = await openStore({ now: standing, indexedDb: freshIndexedDb(), subtle: null });
    const [entry] = await device.log.append(walk, [note("one")]);
    expect(entry?.wire).not.toHaveProperty("sealkey");
    expect(await exportWalk(device.log, walk)).not.toContain('"seal"');
    device.close();
  });

  it("[SEL2] seals again what a store lost that was deleted, under a source of its own from then on", async () => {
    const parts = freshIndexedDb();
    const device = await openStore({ now: standing, indexedDb: parts, name: "lost" });
    await device.log.append(walk, [note("one"), note("two")]);
    await device.log.seal(walk);
    await new Promise<void>((resolve, reject) => {
      const request = parts.indexedDB.deleteDatabase("lost");
      request.onsuccess = () => resolve();
      request.onerror = () => reject(request.error);
    });
    await device.log.append(walk, [note("three")]);
    await until(() => device.log.status().kind === "durable");
    await device.log.append(walk, [note("four")]);
    await device.log.seal(walk);
    const text = await exportWalk(device.log, walk);
    const again = await openStore({ now: standing, indexedDb: parts, name: "lost" });
    const entries = await entriesOf(again.log);
    expect(entries).toHaveLength(4);
    expect(verified(entries).sources.every(({ entries: count, sealed }) => count === sealed)).toBe(true);
    expect(
      text
        .trim()
        .split("\n")
        .every((line) => "seal" in JSON.parse(line)),
    ).toBe(true);
    device.close();
    again.close();
  });
});

/** What may happen to the walk of a device, one after the other. */
const happening = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ kind: fc.constant("enter" as const), count: fc.integer({ min: 1, max: 3 }) }),
  },
  { weight: 3, arbitrary: fc.constant({ kind: "seal" as const }) },
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constant("clock" as const), hours: fc.integer({ min: -3, max: 3 }) }),
  },
  { weight: 2, arbitrary: fc.constant({ kind: "send" as const }) },
  {
    weight: 2,
    arbitrary: fc.record({ kind: fc.constant("hear" as const), number: fc.integer({ min: 1, max: 9 }) }),
  },
  { weight: 1, arbitrary: fc.constant({ kind: "crash" as const }) },
  { weight: 1, arbitrary: fc.constant({ kind: "take off" as const }) },
  { weight: 1, arbitrary: fc.constant({ kind: "bring back" as const }) },
);

describe("the log of a device", () => {
  it("[SEL2] is one chain, sealed throughout, whatever happens to it", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(happening, { minLength: 3, maxLength: 25 }), async (happenings) => {
        const parts = freshIndexedDb();
        const pen = await newPen();
        let time: number = start;
        const now = () => {
          time += 1000;
          return time as Instant;
        };
        let { database, store } = await openTab(parts, now, async () => pen);
        await store.links.join({ ...joining, deviceKey: pen.publicKey });
        const hub = new Map<string, Entry>();
        const exported = new Map<string, Entry>();
        let offset = 0;
        const enterSome = (count: number) =>
          store.append(
            walk,
            Array.from({ length: count }, (_, index) => note(`note ${index}`, time)),
          );
        await enterSome(1);
        for (const one of happenings) {
          if (one.kind === "enter") await enterSome(one.count);
          if (one.kind === "seal") await store.seal(walk);
          if (one.kind === "clock") {
            if (await store.links.get(walk))
              await store.links.setClock(walk, clock(one.hours * 3_600_000), "own");
          }
          if (one.kind === "send") {
            const { entries, round } = await store.links.outbox(walk, 100);
            for (const entry of entries) if (!hub.has(keyOf(entry))) hub.set(keyOf(entry), entry);
            if (entries.length > 0)
              await store.links.settle(
                walk,
                entries.map((entry) => accepted(entry, "known", hub.get(keyOf(entry))?.hlc)),
                round,
              );
          }
          if (one.kind === "hear") {
            const entry = entryFrom(ground, one.number);
            hub.set(keyOf(entry), entry);
            offset += 1;
            if (await store.links.get(walk)) await store.links.takeIn(walk, [...hub.values()], at(offset));
          }
          if (one.kind === "crash") {
            database.close();
            ({ database, store } = await openTab(parts, now, async () => pen));
          }
          if (one.kind === "take off") {
            await store.seal(walk);
            for (const entry of await entriesOf(store)) exported.set(keyOf(entry), entry);
            await store.removeWalk(walk);
          }
          if (one.kind === "bring back") {
            await store.takeIn([...exported.values()]);
            await store.links.join({ ...joining, deviceKey: pen.publicKey });
          }
        }
        await enterSome(1);
        await store.seal(walk);
        const all = [...(await entriesOf(store)), ...hub.values(), ...exported.values()];
        expectSealed(mergeEntries(all).ordered);
        database.close();
      }),
      { numRuns: 60 },
    );
  });
});
