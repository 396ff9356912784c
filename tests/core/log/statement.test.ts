import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Entry, HybridTime } from "../../../src/core/log/index.ts";
import {
  isSameStatement,
  likenessOf,
  mergeEntries,
  readEntry,
  remade,
  statementOf,
  withStamp,
} from "../../../src/core/log/index.ts";
import { copyOf, ZERO } from "../log-writer.ts";
import { worded } from "../said.ts";
import { numberedEntry } from "./numbered-entry.ts";

const time = (wall: number, counter = 0) =>
  `${String(wall).padStart(15, "0")}-${counter.toString(16).padStart(4, "0")}` as HybridTime;

const timesLater = fc.integer({ min: -100_000, max: 100_000 }).map((ms) => time(ZERO + ms));

describe("[SEL1] the statement of an entry", () => {
  it("is the whole entry without its seal, hlcmade and what a hub added, under the time it was made with", () => {
    const { wire } = numberedEntry(7, {
      hlcmade: time(ZERO - 5),
      seal: "abc",
      hubreceived: "2031-04-02T09:00:00Z",
      traceparent: "00-1",
      prior: "def",
    });
    const { wire: made } = numberedEntry(7, { hlc: time(ZERO - 5), traceparent: "00-1", prior: "def" });
    expect(statementOf(wire)).toEqual(made);
  });

  test.prop([fc.array(timesLater, { minLength: 1, maxLength: 5 })])(
    "never changes, however often the entry is stamped anew, and hlcmade is written once",
    (times) => {
      const entry = numberedEntry(7);
      const stamped = times.reduce(withStamp, entry);
      expect(statementOf(stamped.wire)).toEqual(entry.wire);
      expect(stamped.hlc).toBe(times.at(-1));
      expect(stamped.wire.hlc).toBe(stamped.hlc);
      expect(stamped.wire.hlcmade).toBe(stamped.hlc === entry.hlc ? undefined : entry.hlc);
      expect(readEntry(stamped.wire).entry).toEqual(stamped);
    },
  );

  it("leaves an entry that was never stamped anew, or got its own time back, byte for byte as it was", () => {
    const entry = numberedEntry(7);
    const text = JSON.stringify(entry.wire);
    expect(JSON.stringify(withStamp(withStamp(entry, time(ZERO + 99)), entry.hlc).wire)).toBe(text);
    expect(JSON.stringify(statementOf(entry.wire))).toBe(text);
  });

  it.each(["", "yesterday", 7])("does not read an hlcmade that is no hybrid time: %s", (hlcmade) => {
    expect(worded(readEntry({ ...numberedEntry(7).wire, hlcmade }).problem)).toContain("hlcmade");
  });
});

describe("[SEL8] whether two entries are the same", () => {
  const data = { text: "a", more: { x: 1, y: [1, 2] } };
  const entry = numberedEntry(7, { data });
  const restamped = withStamp(entry, time(ZERO + 99));

  it("does not depend on the order in which their keys were written", () => {
    expect(likenessOf(entry, copyOf(entry))).toBe("identical");
    const reordered = numberedEntry(7, { data: { more: { y: [1, 2], x: 1 }, text: "a" } });
    expect(likenessOf(entry, reordered)).toBe("identical");
  });

  it("does not depend on stamps and seals", () => {
    expect(likenessOf(entry, restamped)).toBe("restamped");
    expect(likenessOf(restamped, withStamp(restamped, time(ZERO + 5)))).toBe("restamped");
    expect(likenessOf(entry, numberedEntry(7, { data, seal: "abc", hubname: "Hub" }))).toBe("restamped");
    expect(isSameStatement(entry, restamped)).toBe(true);
  });

  it("tells apart what earlier versions stamped anew without a trace", () => {
    const retimed = numberedEntry(7, { data, hlc: time(ZERO + 99) });
    expect(likenessOf(entry, retimed)).toBe("retimed");
    expect(isSameStatement(entry, retimed)).toBe(false);
  });

  it.each([
    { data: { text: "b", more: { x: 1, y: [1, 2] } } },
    { data: { text: "a", more: { x: 1, y: [2, 1] } } },
    { data, actor: "ground" },
    { data, traceparent: "00-1" },
    { data, prior: "abc" },
    { data, time: "2031-04-02T09:00:01Z" },
  ])("depends on everything else: %o", (change) => {
    expect(likenessOf(entry, numberedEntry(7, change))).toBe("different");
    expect(likenessOf(restamped, numberedEntry(7, change))).toBe("different");
  });
});

describe("[SEL8] entries of earlier versions, whose texts may hold halves of characters", () => {
  const texts = [
    "\ud800",
    "\ud801",
    "\udc00",
    "\ufffd",
    "\ufffdd800",
    "\\ud800",
    "\ufffdfffd",
    "d800",
    "a\ud800",
    "",
  ];
  const [first, ...others] = texts.map((text) => numberedEntry(7, { data: { text } }));

  it("are the same as themselves, under any stamp and order of keys, and as nothing else", () => {
    const half = numberedEntry(7, { data: { "k\ud800": 1, text: "\udc00" } });
    const reordered = numberedEntry(7, { data: { text: "\udc00", "k\ud800": 1 } });
    expect(likenessOf(half, reordered)).toBe("identical");
    expect(likenessOf(half, withStamp(reordered, time(ZERO + 99)))).toBe("restamped");
    expect(likenessOf(half, numberedEntry(7, { data: { "k\ud801": 1, text: "\udc00" } }))).toBe("different");
    for (const other of others) expect(likenessOf(first as Entry, other)).toBe("different");
  });

  test.prop([fc.shuffledSubarray(texts, { minLength: texts.length })])(
    "are merged to the same one on every device, and none is lost",
    (shuffled) => {
      const merged = mergeEntries(shuffled.map((text) => numberedEntry(7, { data: { text } })));
      expect(merged).toEqual(mergeEntries([first as Entry, ...others]));
      expect([...merged.ordered, ...merged.conflicting]).toHaveLength(texts.length);
    },
  );
});

describe("[SEL8] merging", () => {
  const entry = numberedEntry(7);
  const forms: readonly Entry[] = [
    entry,
    withStamp(entry, time(ZERO - 40)),
    withStamp(entry, time(ZERO + 40)),
    numberedEntry(7, { data: { text: "something else" } }),
    withStamp(numberedEntry(7, { data: { text: "something else" } }), time(ZERO - 70)),
    numberedEntry(7, { data: { text: "a third" }, seal: "abc" }),
    numberedEntry(8),
  ];

  it("keeps one of several stamps of a statement, and reports no conflict", () => {
    expect(mergeEntries(forms.slice(0, 3))).toEqual({ ordered: [forms[1]], conflicting: [] });
  });

  test.prop([
    fc.array(fc.constantFrom(...forms), { minLength: 1, maxLength: 12 }),
    fc.infiniteStream(fc.nat()),
    fc.nat(),
  ])("[LOG3] does not depend on the order or on how entries were put together", (entries, ranks, cut) => {
    const ranked = entries.map((one) => ({ one, rank: ranks.next().value ?? 0 }));
    const shuffled = ranked.sort((a, b) => a.rank - b.rank).map(({ one }) => copyOf(one));
    const whole = mergeEntries(entries);
    expect(mergeEntries(shuffled)).toEqual(whole);
    const at = cut % (entries.length + 1);
    const first = mergeEntries(entries.slice(0, at));
    expect(mergeEntries([...first.ordered, ...first.conflicting, ...entries.slice(at)])).toEqual(whole);
  });
});

describe("[SEL1] [SEL2] an entry made again under another source", () => {
  it("names the entry that it was made of, and has a statement and a place of its own", () => {
    const old = withStamp(
      numberedEntry(7, { seal: "abc", sealkey: "def", prior: "ghi", hubname: "Hub", traceparent: "00-1" }),
      time(ZERO + 99),
    );
    const { wire, hlc } = remade(old, {
      source: "/devices/iv-tablet/memory-k7f3",
      number: 3,
      hlc: time(ZERO + 5),
    });
    const { wire: made } = numberedEntry(7, { traceparent: "00-1" });
    expect(wire).toEqual({
      ...made,
      source: "/devices/iv-tablet/memory-k7f3",
      id: "0000000003",
      sequence: "0000000003",
      hlc: time(ZERO + 5),
      remadefrom: "/devices/iv-tablet 0000000007",
    });
    expect(hlc).toBe(wire.hlc);
    expect(statementOf(wire)).toEqual(wire);
    // CloudEvents allows lower-case letters and digits in the names of attributes.
    for (const attribute of Object.keys(wire)) expect(attribute).toMatch(/^[a-z0-9]+$/);
  });
});
