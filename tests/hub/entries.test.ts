import { fc, test } from "@fast-check/vitest";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { HybridTime, WireEntry } from "../../src/core/log/index.ts";
import { tick } from "../../src/core/log/index.ts";
import { SequenceRanges } from "../../src/hub/entries/sequence-ranges.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written, writtenNotes } from "./written-entry.ts";

const DEVICE = "/devices/d";
let hub: TestHub;
let token: string;

beforeEach(async () => {
  hub = await TestHub.open();
  token = await hub.join(DEVICE);
});
afterEach(() => hub.close());

const push = async (entries: unknown) =>
  (await hub.push(token, entries)).json<{
    results: { source: string | null; id: string | null; outcome: string; reason?: string; words?: string }[];
    gaps: unknown[];
  }>();

describe("[HUB] judging entries", () => {
  it("reports each entry in order; the rest of a batch stands", async () => {
    const { results } = await push([
      written(DEVICE, 1),
      "no entry",
      written(DEVICE, 2, { subject: "walk-2" }),
      written("/devices/other", 1),
      { source: "/devices/x", id: 7 },
      written(DEVICE, 3, { data: { text: 7 } }),
      written(DEVICE, 4, { at: (NOON + 60_001) as typeof NOON }),
      written(DEVICE, 1),
      written(DEVICE, 1, { data: { text: "otherwise" } }),
      written(DEVICE, 5, { at: (NOON + 60_000) as typeof NOON }),
      written(DEVICE, 6, { source: `${DEVICE}/\u0000` }),
    ]);
    expect(results.map(({ outcome, reason, id }) => [outcome, reason, id && Number(id)])).toEqual([
      ["accepted", undefined, 1],
      ["refused", "not-an-entry", null],
      ["refused", "other-walk", 2],
      ["refused", "other-source", 1],
      ["refused", "not-an-entry", null],
      ["refused", "not-an-entry", 3],
      ["refused", "ahead", 4],
      ["known", undefined, 1],
      ["refused", "conflict", 1],
      ["accepted", undefined, 5],
      ["refused", "not-an-entry", 6],
    ]);
    for (const { words, outcome } of results) {
      if (outcome === "refused") expect(words).toMatch(/^[A-Z].*\.$/);
    }
    const kept = (await hub.log()).trimEnd().split("\n");
    expect(kept.map((line) => (JSON.parse(line) as WireEntry).id)).toEqual(["0000000001", "0000000005"]);
  });

  it("[SEL8] knows an entry that was stamped anew since, and says under which time it is kept", async () => {
    const one = written(DEVICE, 1);
    await push([one]);
    const other = tick(one.hlc as HybridTime, NOON);
    const { results } = await push([
      { ...one, hlc: other, hlcmade: one.hlc },
      { ...one, hlc: other },
    ]);
    expect(results).toMatchObject([
      { source: DEVICE, id: one.id, outcome: "known", hlc: one.hlc },
      { outcome: "refused", reason: "conflict" },
    ]);
    expect(await hub.engine.refused(WALK, 10)).toHaveLength(1);
  });

  it("is idempotent however often and however split a batch comes, whatever the clock says meanwhile", async () => {
    const entries = writtenNotes(DEVICE, 1, 40);
    await push(entries.slice(0, 25));
    await push(entries.slice(10, 30));
    hub.now = (NOON + 3_600_000) as typeof NOON;
    const { results } = await push(entries);
    expect(results.filter(({ outcome }) => outcome === "known")).toHaveLength(30);
    expect(
      (await hub.log())
        .trimEnd()
        .split("\n")
        .map((line) => (JSON.parse(line) as WireEntry).id),
    ).toEqual(entries.map(({ id }) => id));
  });

  it("knows what it keeps, and what is in conflict with it, though its clock was set back since", async () => {
    const one = written(DEVICE, 1);
    await push([one]);
    hub.now = (NOON - 3_600_000) as typeof NOON;
    const { results } = await push([
      one,
      written(DEVICE, 1, { data: { text: "otherwise" } }),
      written(DEVICE, 2),
      written(DEVICE, 3, { at: hub.now }),
    ]);
    expect(results.map(({ outcome, reason }) => [outcome, reason])).toEqual([
      ["known", undefined],
      ["refused", "conflict"],
      ["refused", "ahead"],
      ["accepted", undefined],
    ]);
    expect(await hub.engine.refused(WALK, 10)).toMatchObject([{ reason: "conflict" }]);
    expect((await hub.log()).match(/\n/g)).toHaveLength(2);
  });

  it("keeps further attributes and unknown types of a newer version", async () => {
    const newer = written(DEVICE, 1, {
      type: "tetherline.new.thing",
      data: { deep: [1, { a: null }] },
      extra: "é😀",
    });
    await push([newer]);
    expect(JSON.parse(await hub.log())).toEqual(newer);
  });
});

describe("[HUB] gaps in a source's sequence", () => {
  const gap = (source: string, from: number, to: number) => ({
    source,
    from: String(from).padStart(10, "0"),
    to: String(to).padStart(10, "0"),
  });

  it("are accepted and reported until they are filled, for the sources of the batch", async () => {
    const memory = `${DEVICE}/memory-1`;
    expect((await push([written(DEVICE, 3), written(DEVICE, 7)])).gaps).toEqual([
      gap(DEVICE, 1, 2),
      gap(DEVICE, 4, 6),
    ]);
    expect((await push([written(memory, 2)])).gaps).toEqual([gap(memory, 1, 1)]);
    expect((await push([written(DEVICE, 5)])).gaps).toEqual([
      gap(DEVICE, 1, 2),
      gap(DEVICE, 4, 4),
      gap(DEVICE, 6, 6),
    ]);
    expect((await push(writtenNotes(DEVICE, 1, 6))).gaps).toEqual([]);
    expect((await push([written(DEVICE, 7)])).gaps).toEqual([]);
  });

  it("are known to a hub that starts on an old log, and follow what another hub takes in", async () => {
    await push([written(DEVICE, 2)]);
    const second = await TestHub.open({}, hub.engine);
    const send = async (entries: unknown) =>
      (await second.push(token, entries)).json<{ gaps: unknown[] }>().gaps;
    expect(await send([written(DEVICE, 4)])).toEqual([gap(DEVICE, 1, 1), gap(DEVICE, 3, 3)]);
    await push([written(DEVICE, 3)]);
    expect(await send([written(DEVICE, 4)])).toEqual([gap(DEVICE, 1, 1)]);
    await second.close();
  });

  test.prop([fc.array(fc.bigInt({ min: 0n, max: 40n }), { maxLength: 60 })])(
    "are what a plain set of numbers says",
    (numbers) => {
      const ranges = new SequenceRanges();
      for (const number of numbers) ranges.add(number);
      const there = new Set(numbers);
      const highest = numbers.reduce((most, number) => (number > most ? number : most), 0n);
      const missing: bigint[] = [];
      for (let number = 1n; number < highest; number += 1n) if (!there.has(number)) missing.push(number);
      const listed = ranges.missing().flatMap(({ from, to }) => {
        const all: bigint[] = [];
        for (let number = from; number <= to; number += 1n) all.push(number);
        return all;
      });
      expect(listed).toEqual(missing);
      // Ranges that touch are one.
      const edges = ranges.missing();
      for (const [index, { from }] of edges.entries()) {
        const before = edges[index - 1];
        if (before) expect(from > before.to + 1n).toBe(true);
      }
    },
  );
});
