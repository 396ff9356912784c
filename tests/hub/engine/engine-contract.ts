import { fc, test as propertyTest } from "@fast-check/vitest";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { keyOf, readEntry, tick, withStamp } from "../../../src/core/log/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import type { AppendOutcome, Engine, StoredEntry } from "../../../src/hub/engine/index.ts";
import { readAll } from "./read-all.ts";
import { NOON, note, notes, WALK } from "./written-notes.ts";

/** A store that engines are opened on. */
export interface StoreUnderTest {
  /** Opens an engine on it, the same again after the one before was closed; at the same time where several hubs may share it. */
  open(): Promise<Engine>;
  /** Does away with it. */
  end(): Promise<void>;
}

/** How a kind of engine is tested. */
export interface EngineKind {
  readonly name: string;
  /** Whether several hubs may use the same store. */
  readonly isShared: boolean;
  /** Runs of a property. */
  readonly runs: number;
  /** A store that never had anything in it. */
  newStore(): Promise<StoreUnderTest>;
}

const kinds = (outcomes: readonly AppendOutcome[]) => outcomes.map(({ kind }) => kind);
const OTHER = "walk-2" as WalkId;

/** What every engine must do, whatever it rests on. */
export function testEngine({ name, isShared, runs, newStore }: EngineKind): void {
  describe(`[HUB] engine ${name}`, () => {
    let store: StoreUnderTest;
    let engines: Engine[];
    const open = async (): Promise<Engine> => {
      const engine = await store.open();
      engines.push(engine);
      return engine;
    };
    /** The engine of another hub where there may be one, else the same. */
    const openAnother = async (one: Engine): Promise<Engine> => (isShared ? open() : one);

    beforeEach(async () => {
      engines = [];
      store = await newStore();
    });
    afterEach(async () => {
      for (const engine of engines) await engine.close();
      await store.end();
    });

    test("says how entries stand beside what is kept, and keeps nothing of them", async () => {
      const engine = await open();
      await engine.append(WALK, notes(1, 1));
      const offered = [note({ number: 1 }), note({ number: 1, text: "another" }), note({ number: 2 })];
      expect(await engine.compare(WALK, offered)).toEqual([{ kind: "known" }, { kind: "conflict" }, null]);
      expect(await engine.compare(OTHER, notes(1, 1, { walk: OTHER }))).toEqual([null]);
      expect((await engine.read(WALK, 0, 100)).length).toBe(1);
      expect((await engine.walks()).map(({ walk }) => walk)).toEqual([WALK]);
    });

    test("entries are read in the order in which they were kept, by offsets that grow", async () => {
      const engine = await open();
      await engine.append(WALK, notes(1, 3));
      await engine.append(OTHER, notes(1, 2, { walk: OTHER }));
      const outcomes = await engine.append(WALK, notes(4, 5));
      const kept = await engine.read(WALK, 0, 100);
      expect(kept.map(({ id }) => Number(id))).toEqual([1, 2, 3, 4, 5]);
      expect(kept.slice(3).map(({ offset }) => ({ kind: "accepted", offset }))).toEqual(outcomes);
      expect(isGrowing(kept)).toBe(true);
      expect(await engine.head(WALK)).toBe(kept.at(-1)?.offset);
      expect(await engine.read(WALK, kept[2]?.offset ?? 0, 1)).toEqual([kept[3]]);
      expect(await engine.read(WALK, 0, 2)).toEqual(kept.slice(0, 2));
      expect(await engine.read(WALK, await engine.head(WALK), 10)).toEqual([]);
      expect(await engine.behind(WALK, 0)).toBe(5);
      expect(await engine.behind(WALK, await engine.head(WALK))).toBe(0);
      for (const [index, { offset }] of kept.entries())
        expect(await engine.behind(WALK, offset)).toBeGreaterThanOrEqual(4 - index);
    });

    test("it is known through which other hub something of a device or below it came", async () => {
      const engine = await open();
      const from = (source: string) => notes(1, 1, { source });
      await engine.append(WALK, from("/devices/own"));
      await engine.append(WALK, from("/devices/far/page"), { via: "/hubs/far" });
      await engine.append(OTHER, notes(1, 1, { source: "/devices/own", walk: OTHER }), { via: "/hubs/far" });
      const devices = ["/devices/own", "/devices/far", "/devices/far/page", "/devices/fa", "/devices/none"];
      const through = await Promise.all(devices.map((device) => engine.cameThrough(WALK, device)));
      expect(through).toEqual([null, "/hubs/far", "/hubs/far", null, null]);
      expect(await engine.cameThrough(OTHER, "/devices/own")).toBe("/hubs/far");
    });

    test("a page ends after a million characters, and is never empty while there is more", async () => {
      const engine = await open();
      const long = notes(1, 4, { text: "x".repeat(300_000) });
      await engine.append(WALK, [
        ...long,
        ...notes(5, 5, { text: "y".repeat(1_000_000) }),
        note({ number: 6 }),
      ]);
      const pages: number[] = [];
      for (let after = 0; ; ) {
        const page = await engine.read(WALK, after, 100);
        const last = page.at(-1);
        if (!last) break;
        pages.push(page.length);
        after = last.offset;
      }
      expect(pages.reduce((sum, count) => sum + count, 0)).toBe(6);
      expect(Math.max(...pages)).toBeLessThanOrEqual(4);
      expect(pages.length).toBeGreaterThanOrEqual(2);
    });

    test("how much each source wrote, and the numbers that it gave, are known without its entries", async () => {
      const engine = await open();
      await engine.append(WALK, notes(1, 3));
      await engine.append(WALK, notes(1, 2, { source: "/devices/one/page" }));
      await engine.append(WALK, notes(7, 7, { source: "/devices/one-more" }));
      await engine.append(OTHER, notes(1, 1, { walk: OTHER }));
      const kept = await engine.read(WALK, 0, 100);
      const lengthOf = (...sources: string[]) =>
        kept.filter(({ source }) => sources.includes(source)).reduce((sum, { text }) => sum + text.length, 0);
      expect(await engine.lengthOf(WALK, null)).toBe(kept.reduce((sum, { text }) => sum + text.length, 0));
      expect(await engine.lengthOf(WALK, "/devices/one")).toBe(lengthOf("/devices/one", "/devices/one/page"));
      expect(await engine.lengthOf(WALK, "/devices/none")).toBe(0);
      expect([...(await engine.sequencesOf(WALK, "/devices/one"))].sort()).toEqual(
        notes(1, 3).map(({ wire }) => wire.sequence),
      );
      expect(await engine.sequencesOf(WALK, "/devices/none")).toEqual([]);
    });

    test("an entry is kept as it was written, with where it came through and when", async () => {
      const engine = await open();
      const entry = note({ source: "/devices/ü%20*.>", number: 1, text: "a\n„b“ \u2028" });
      await engine.append(WALK, [entry], { via: "hub ground ü" });
      await engine.append(WALK, [note({ number: 2 })]);
      const [first, second] = await engine.read(WALK, 0, 10);
      expect(readEntry(JSON.parse(first?.text ?? "")).entry?.wire).toEqual(entry.wire);
      expect(first?.text).not.toContain("\n");
      expect(first).toMatchObject({
        source: entry.wire.source,
        id: entry.wire.id,
        sequence: entry.wire.sequence,
      });
      expect(first).toMatchObject({ via: "hub ground ü", received: NOON });
      expect(second?.via).toBeNull();
    });

    test("an equal entry again is known, a different one under its key is in conflict, and neither is kept twice", async () => {
      const engine = await open();
      const first = note({ number: 1 });
      const sorted = Object.fromEntries(Object.entries(first.wire).sort(([a], [b]) => (a < b ? -1 : 1)));
      const { entry: again } = readEntry(sorted);
      if (!again) throw new Error("not an entry");
      const other = note({ number: 1, text: "something else" });
      const outcomes = await engine.append(WALK, [first, first, again, other, note({ number: 2 })]);
      expect(kinds(outcomes)).toEqual(["accepted", "known", "known", "conflict", "accepted"]);
      expect(kinds(await engine.append(WALK, [other, first]))).toEqual(["conflict", "known"]);
      expect((await engine.read(WALK, 0, 10)).map(({ text }) => JSON.parse(text).data.text)).toEqual([
        "seen",
        "seen",
      ]);
    });

    test("[SEL8] the same statement under another stamp is known, with the time under which it is stored", async () => {
      const engine = await open();
      const [first, second] = [note({ number: 1 }), note({ number: 2 })];
      const restamped = withStamp(first, tick(first.hlc, NOON));
      expect(kinds(await engine.append(WALK, [first, second]))).toEqual(["accepted", "accepted"]);
      const known = { kind: "known", hlc: first.hlc };
      expect(await engine.append(WALK, [restamped])).toEqual([known]);
      expect(await engine.compare(WALK, [restamped, first])).toEqual([known, { kind: "known" }]);
      expect((await engine.read(WALK, 0, 10)).map(({ text }) => text)).toEqual(
        [first, second].map(({ wire }) => JSON.stringify(wire)),
      );
    });

    test("the same source and id in another walk is another entry", async () => {
      const engine = await open();
      await engine.append(WALK, [note({ number: 1 })]);
      expect(kinds(await engine.append(OTHER, [note({ number: 1, walk: OTHER, text: "there" })]))).toEqual([
        "accepted",
      ]);
      expect(await engine.walks()).toEqual([
        { walk: WALK, entries: 1, head: await engine.head(WALK) },
        { walk: OTHER, entries: 1, head: await engine.head(OTHER) },
      ]);
    });

    test("a walk nobody wrote to has nothing", async () => {
      const engine = await open();
      expect(await engine.walks()).toEqual([]);
      expect(await engine.head(WALK)).toBe(0);
      expect(await engine.read(WALK, 0, 10)).toEqual([]);
      expect(await engine.refused(WALK, 10)).toEqual([]);
      expect(await engine.append(WALK, [])).toEqual([]);
    });

    test("what was confirmed is there after opening again, under the same epoch", async () => {
      const engine = await open();
      await engine.append(WALK, notes(1, 20), { via: "elsewhere", alsoKeep: new Map([["cursor", "x:1"]]) });
      const refused = { text: "{}", reason: "conflict", received: NOON };
      await engine.keepRefused(WALK, refused);
      const [kept, walks, { epoch }] = [await engine.read(WALK, 0, 100), await engine.walks(), engine];
      await engine.close();
      const again = await open();
      expect(again.epoch).toBe(epoch);
      expect(epoch).toMatch(/^[A-Za-z0-9_-]{8,64}$/);
      expect(await again.read(WALK, 0, 100)).toEqual(kept);
      expect(await again.walks()).toEqual(walks);
      expect(await again.keep.get("cursor")).toBe("x:1");
      expect(await again.refused(WALK, 5)).toEqual([refused]);
      expect(kinds(await again.append(WALK, notes(20, 21)))).toEqual(["known", "accepted"]);
    });

    test("values are kept with the entries, also without any, and whoever watches is told", async () => {
      const engine = await open();
      const told: [string, string | null][] = [];
      const stop = engine.keep.watch("up/", (key, value) => told.push([key, value]));
      await engine.append(WALK, notes(1, 1), {
        alsoKeep: new Map([
          ["up/a", "1"],
          ["down", "2"],
        ]),
      });
      await engine.append(WALK, [], { alsoKeep: new Map([["up/a", "3"]]) });
      expect(await engine.keep.list("up/")).toEqual(new Map([["up/a", "3"]]));
      await expect
        .poll(() => told)
        .toEqual([
          ["up/a", "1"],
          ["up/a", "3"],
        ]);
      stop();
    });

    test("small things are put, made once, removed, listed by their beginning and watched", async () => {
      const engine = await open();
      const another = await openAnother(engine);
      const odd = "a/ü %_*.> b";
      await engine.keep.put("a/before", "old");
      // What was put before may be told late elsewhere; a list is up to date.
      await another.keep.list("");
      const told: [string, string | null][] = [];
      const stop = another.keep.watch("a/", (key, value) => told.push([key, value]));
      await engine.keep.put(odd, "1");
      await engine.keep.put("A/one", "not this");
      await engine.keep.put(odd, "2");
      expect(await another.keep.get(odd)).toBe("2");
      expect(await another.keep.create(odd, "3")).toBe(false);
      await another.keep.remove(odd);
      expect(await engine.keep.get(odd)).toBeNull();
      expect(await engine.keep.create(odd, "")).toBe(true);
      expect(await engine.keep.get(odd)).toBe("");
      expect(await engine.keep.list("a/")).toEqual(
        new Map([
          ["a/before", "old"],
          [odd, ""],
        ]),
      );
      expect(await another.keep.list("")).toHaveProperty("size", 3);
      await expect
        .poll(() => told)
        .toEqual([
          [odd, "1"],
          [odd, "2"],
          [odd, null],
          [odd, ""],
        ]);
      stop();
      await engine.keep.put(odd, "unheard");
      expect(await engine.keep.get("none")).toBeNull();
      await engine.keep.remove("none");
      expect(told).toHaveLength(4);
    });

    test("of many who make the same thing at once, one does", async () => {
      const engine = await open();
      const another = await openAnother(engine);
      const made = await Promise.all(
        Array.from({ length: 20 }, (_, index) =>
          (index % 2 ? engine : another).keep.create("secret", String(index)),
        ),
      );
      expect(made.filter(Boolean)).toHaveLength(1);
      expect(await another.keep.get("secret")).toBe(String(made.indexOf(true)));
    });

    test("refused entries are kept for each walk, the last 1,000 of them, oldest first", async () => {
      const engine = await open();
      const refused = (number: number) => ({ text: `{"id":${number}}`, reason: "conflict", received: NOON });
      for (let from = 0; from < 1_010; from += 101) {
        await Promise.all(
          Array.from({ length: 101 }, (_, index) => engine.keepRefused(WALK, refused(from + index))),
        );
      }
      await engine.keepRefused(OTHER, refused(1));
      const kept = await engine.refused(WALK, 2_000);
      expect(kept).toHaveLength(1_000);
      expect(kept.at(-1)).toEqual(refused(1_009));
      expect(await engine.refused(WALK, 2)).toEqual([refused(1_008), refused(1_009)]);
      expect(await engine.refused(OTHER, 10)).toEqual([refused(1)]);
    });

    test("a follower who begins in the midst of writing misses nothing and hears nothing twice", async () => {
      const engine = await open();
      const another = await openAnother(engine);
      const writing = Promise.all(
        Array.from({ length: 60 }, async (_, turn) => {
          await new Promise((resolve) => setTimeout(resolve, turn));
          await (turn % 2 ? engine : another).append(WALK, notes(turn * 5 + 1, turn * 5 + 5));
        }),
      );
      await new Promise((resolve) => setTimeout(resolve, 25));
      const told: StoredEntry[] = [];
      const stop = another.follow((walk, kept) => {
        if (walk === WALK) told.push(...kept);
      });
      const read = await another.read(WALK, 0, 10_000);
      const upTo = read.at(-1)?.offset ?? 0;
      await writing;
      const all = await another.read(WALK, 0, 10_000);
      const heard = () => [...read, ...told.filter(({ offset }) => offset > upTo)];
      await expect.poll(() => heard().length).toBe(300);
      expect(heard()).toEqual(all);
      expect(isGrowing(told)).toBe(true);
      stop();
      await another.append(WALK, notes(301, 301));
      await another.read(WALK, 0, 10_000);
      expect(told.at(-1)?.id).not.toBe(note({ number: 301 }).wire.id);
    });

    test("10,000 entries are counted, found and read in a second", { retry: 2 }, async () => {
      const engine = await open();
      for (let from = 1; from <= 10_000; from += 500) await engine.append(WALK, notes(from, from + 499));
      const before = performance.now();
      const head = await engine.head(WALK);
      expect(await engine.walks()).toEqual([{ walk: WALK, entries: 10_000, head }]);
      const kept = await readAll(engine, WALK);
      expect(performance.now() - before).toBeLessThan(1_000);
      expect(kept).toHaveLength(10_000);
      expect(kept.at(-1)?.offset).toBe(head);
      expect((await engine.read(WALK, kept[9_989]?.offset ?? 0, 20_000)).map(({ id }) => Number(id))).toEqual(
        Array.from({ length: 10 }, (_, index) => 9_991 + index),
      );
    });

    test("a whisper is heard by the other hubs alone", async () => {
      const engine = await open();
      const another = await openAnother(engine);
      const heard: string[] = [];
      engine.onWhisper("topic", (text) => heard.push(`own ${text}`));
      const stop = another.onWhisper("topic", (text) => heard.push(text));
      await new Promise((resolve) => setTimeout(resolve, 50));
      engine.whisper("topic", "hush");
      engine.whisper("other", "not this");
      if (isShared) await expect.poll(() => heard).toEqual(["hush"]);
      stop();
      engine.whisper("topic", "late");
      await engine.keep.get("something");
      await another.keep.get("something");
      expect(heard).toEqual(isShared ? ["hush"] : []);
    });

    test("after closing, it says so instead of keeping anything", async () => {
      const engine = await open();
      await engine.close();
      await engine.close();
      await expect(engine.append(WALK, notes(1, 1))).rejects.toThrow("closed");
      await expect(engine.read(WALK, 0, 1)).rejects.toThrow("closed");
    });

    const offered = fc.record({
      client: fc.constantFrom(0, 1),
      batch: fc.array(
        fc.record({
          source: fc.constantFrom("/devices/one", "/devices/two"),
          number: fc.integer({ min: 1, max: 9 }),
          text: fc.constantFrom("this", "that"),
        }),
        { maxLength: 8 },
      ),
    });
    propertyTest.prop([fc.array(offered, { maxLength: 12 })], { numRuns: runs })(
      "whatever two clients append at once, each key is kept once and each answer is true",
      async (batches) => {
        const fresh = await newStore();
        const opened: Engine[] = [];
        try {
          const [one, two] = [await fresh.open(), isShared ? await fresh.open() : null];
          opened.push(one, ...(two ? [two] : []));
          const told: StoredEntry[] = [];
          one.follow((_walk, kept) => told.push(...kept));
          const answered = await Promise.all(
            batches.map(async ({ client, batch }) => {
              const entries = batch.map((written) => note(written));
              return { entries, outcomes: await (client === 1 ? (two ?? one) : one).append(WALK, entries) };
            }),
          );
          const kept = await one.read(WALK, 0, 1_000);
          const byKey = new Map(kept.map((each) => [`${each.source} ${each.id}`, each]));
          expect(byKey.size).toBe(kept.length);
          expect(isGrowing(kept)).toBe(true);
          const accepted: number[] = [];
          for (const { entries, outcomes } of answered) {
            expect(outcomes).toHaveLength(entries.length);
            for (const [index, outcome] of outcomes.entries()) {
              const entry = entries[index] as Entry;
              const here = byKey.get(keyOf(entry));
              expect(here?.text === JSON.stringify(entry.wire)).toBe(outcome.kind !== "conflict");
              if (outcome.kind === "accepted") {
                expect(here?.offset).toBe(outcome.offset);
                accepted.push(outcome.offset);
              }
            }
          }
          expect(accepted.sort((a, b) => a - b)).toEqual(kept.map(({ offset }) => offset));
          await expect.poll(() => told.length).toBe(kept.length);
          expect(told).toEqual(kept);
        } finally {
          for (const engine of opened) await engine.close();
          await fresh.end();
        }
      },
    );
  });
}

function isGrowing(kept: readonly StoredEntry[]): boolean {
  return kept.every(({ offset }, index) => offset > (kept[index - 1]?.offset ?? 0));
}
