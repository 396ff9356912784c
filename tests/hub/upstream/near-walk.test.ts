import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Settled } from "../../../src/core/link/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { type Instant, parseInstant } from "../../../src/core/units/index.ts";
import { type Engine, openEngine } from "../../../src/hub/engine/index.ts";
import { type JournalEvent, NO_JOURNAL } from "../../../src/hub/journal/index.ts";
import { NearWalk } from "../../../src/hub/upstream/near-walk.ts";
import { NOON, notes, WALK } from "../engine/written-notes.ts";
import { HERE, THERE } from "./two-hubs.ts";

const FAR = "/hubs/far";
const OWN = "/devices/own";
const noted: JournalEvent[] = [];
const HOUR = 3_600_000;
const numbers = (entries: readonly Entry[]) => entries.map(({ wire }) => Number(wire.sequence));

describe("[LINK] this side of a walk", () => {
  let folder: string;
  let engine: Engine;
  let now: Instant;
  /** What is to be called back, and after how many ms. */
  let timers: { readonly ms: number; readonly work: () => void }[];

  const open = (over: Partial<Engine> = {}) =>
    NearWalk.open({
      engine: { ...engine, ...over },
      walk: WALK,
      far: FAR,
      isOwn: (_walk, device) => device === OWN,
      journal: { ...NO_JOURNAL, note: (event) => noted.push(event) },
      now: () => now,
      later: (ms, work) => {
        const timer = { ms, work };
        timers.push(timer);
        return () => {
          timers = timers.filter((one) => one !== timer);
        };
      },
    });
  const cursor = (epoch: string, offset = 0) => ({ epoch, offset });
  const accepted = (entries: readonly Entry[]): Settled[] =>
    entries.map((entry) => ({ entry, result: { ...idOf(entry), outcome: "accepted" } }));
  const ahead = (entries: readonly Entry[]): Settled[] =>
    entries.map((entry) => ({
      entry,
      result: { ...idOf(entry), outcome: "refused", reason: "ahead", words: "ahead" },
    }));
  const idOf = ({ wire: { source, id } }: Entry) => ({ source, id });

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), "tetherline-near-"));
    now = NOON;
    timers = [];
    engine = await openEngine({ data: folder, engine: null, now: () => now });
  });
  afterEach(async () => {
    await engine.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("[SEL4] what the other hub brings of a device of this one is kept aside and noted, unless it is here already", async () => {
    const near = await open();
    noted.length = 0;
    await engine.append(WALK, notes(1, 1, { source: OWN }));
    const forged = [
      ...notes(2, 3, { source: `${OWN}/page` }),
      ...notes(1, 1, { source: OWN, text: "forged" }),
    ];
    await near.takeIn([...notes(1, 1, { source: OWN }), ...forged, ...notes(1, 1, { source: THERE })], {
      epoch: "far",
      offset: 5,
    });
    expect((await engine.read(WALK, 0, 10)).map(({ source }) => source)).toEqual([OWN, THERE]);
    const refused = await engine.refused(WALK, 10);
    expect(refused.map(({ reason }) => reason)).toEqual(["other-source", "other-source", "conflict"]);
    expect(noted).toEqual([{ event: "refused", walk: WALK, device: FAR, reasons: { "other-source": 2 } }]);
    expect(await near.cursor()).toEqual({ epoch: "far", offset: 5 });
  });

  test("an answer to what was sent before the other hub lost its store settles nothing", async () => {
    const near = await open();
    await near.takeIn([], cursor("first"));
    await engine.append(WALK, notes(1, 3, { source: HERE }));
    const offered = await near.outbox(10);
    expect(numbers(offered)).toEqual([1, 2, 3]);
    await near.takeIn([], cursor("second"));
    expect(await near.unsent()).toBe(3);
    await near.settle(accepted(offered));
    expect(await near.unsent()).toBe(3);
    expect(numbers(await (await open()).outbox(10))).toEqual([1, 2, 3]);
    await near.settle(accepted(await near.outbox(10)));
    expect(await near.unsent()).toBe(0);
  });

  test("what could not be noted as early still waits", async () => {
    await engine.append(WALK, notes(1, 2, { source: HERE }));
    let isFull = true;
    const put: Engine["keep"]["put"] = (...pair) =>
      isFull ? Promise.reject(new Error("full")) : engine.keep.put(...pair);
    const near = await open({ keep: { ...engine.keep, put } });
    await expect(near.settle(ahead(await near.outbox(10)))).rejects.toThrow("full");
    expect(await near.unsent()).toBe(2);
    isFull = false;
    const offered = await near.outbox(10);
    expect(numbers(offered)).toEqual([1, 2]);
    await near.settle([...accepted(offered.slice(0, 1)), ...ahead(offered.slice(1))]);
    expect(await near.unsent()).toBe(1);
  });

  test("what is early is awaited for hours at a time, whatever the clock does meanwhile", async () => {
    await engine.append(WALK, notes(1, 2, { source: HERE }));
    now = ((parseInstant("2021-04-02T09:12:31.500Z") ?? 0) - 40 * 24 * HOUR) as Instant;
    const near = await open();
    let told = 0;
    const stop = near.watch(() => {
      told += 1;
    });
    await near.settle(ahead(await near.outbox(10)));
    const fire = () => {
      const [timer] = timers.splice(0);
      expect(timer?.ms).toBeLessThanOrEqual(HOUR);
      timer?.work();
    };
    for (let turn = 0; turn < 3; turn += 1) fire();
    expect([told, timers.length]).toEqual([0, 1]);
    now = (now + 40 * 24 * HOUR) as Instant;
    fire();
    expect([told, timers.length, numbers(await near.outbox(10))]).toEqual([1, 0, [1, 2]]);
    stop();
  });

  test("says up to when all is sent with very many entries that are early", async () => {
    const count = 150_000;
    const early = Array.from({ length: count }, (_, index) => ({
      offset: index + 1,
      received: NOON - index,
      due: NOON + HOUR,
    }));
    const state = {
      epoch: engine.epoch,
      farEpoch: "first",
      mark: count,
      again: 0,
      early,
      refused: 0,
      words: null,
    };
    await engine.keep.put(`upstream.out ${FAR} ${WALK}`, JSON.stringify(state));
    const near = await open();
    expect([await near.unsent(), await near.sentUpTo()]).toEqual([count, NOON - count]);
  });

  test("an entry that this version cannot read holds nothing up and is told of", async () => {
    await engine.append(WALK, notes(1, 4, { source: HERE }));
    const near = await open({
      read: async (...wish) =>
        (await engine.read(...wish)).map((kept) => (kept.offset < 3 ? { ...kept, text: '{"odd":1}' } : kept)),
    });
    expect(numbers(await near.outbox(2))).toEqual([3, 4]);
    expect([await near.unsent(), near.refusals.count]).toEqual([2, 2]);
    expect(near.refusals.words).toMatch(/cannot be read/);
  });

  test("what is settled and what is learnt of the other hub at the same time do not undo one another", async () => {
    let puts = 0;
    const slow: Engine["keep"] = {
      ...engine.keep,
      put: async (key, value) => {
        puts += 1;
        await wait(20);
        await engine.keep.put(key, value);
      },
    };
    const near = await open({ keep: slow });
    await near.takeIn(notes(1, 2, { source: THERE }), cursor("first", 2));
    await engine.append(WALK, notes(1, 3, { source: HERE }));
    const offered = await near.outbox(10);
    expect(offered).toHaveLength(3);
    puts = 0;
    const learning = near.takeIn([], cursor("second"));
    await expect.poll(() => puts, { interval: 1 }).toBe(1);
    await Promise.all([learning, near.settle(accepted(offered))]);
    // It lost everything, also what came from there: all of it goes, after a restart too.
    expect(await near.unsent()).toBe(5);
    expect(await (await open()).unsent()).toBe(5);
  });
});
