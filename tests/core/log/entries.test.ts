import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import {
  compareEntries,
  isFromNewerVersion,
  keyOf,
  mergeEntries,
  readEntry,
  readLines,
  stamp,
  UnreadableEntryError,
  writeLines,
} from "../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { copyOf, entryFrom } from "../log-writer.ts";
import { worded } from "../said.ts";

const WIRE = {
  specversion: "1.0",
  id: "0000000007",
  source: "/devices/iv-tablet",
  type: "tetherline.step.done",
  subject: "walk-1",
  time: "2031-04-02T09:12:31.500Z",
  recordedtime: "2031-04-02T09:12:33.020Z",
  sequence: "0000000007",
  hlc: "001932974353020-0000",
  actor: "iv",
  datacontenttype: "application/json",
  data: { step: "ev1-loosen" },
};

const entry = (change: Partial<Record<keyof typeof WIRE, unknown>>) => entryFrom({ ...WIRE, ...change });

describe("an entry", () => {
  it("[LOG1] is read from a CloudEvent", () => {
    const read = entry({});
    expect(read).toMatchObject({ walk: "walk-1", hlc: WIRE.hlc, at: Date.parse(WIRE.time) });
    expect(read.read.fact).toEqual({ name: "step.done", step: "ev1-loosen", outOfOrder: false });
  });

  it("[LOG1] keeps attributes of a newer version", () => {
    expect(entryFrom({ ...WIRE, traceparent: "00-1" }).wire).toMatchObject({ traceparent: "00-1" });
  });

  it.each([
    ["specversion", "0.3"],
    ["id", ""],
    ["source", "/devices/iv tablet"],
    ["source", ""],
    ["type", 7],
    ["subject", undefined],
    ["time", "yesterday"],
    ["time", "2031-02-30T00:00:00Z"],
    ["sequence", "seven"],
    ["hlc", "1932974353020-0"],
    ["hlc", "001932974353020-000G"],
    ["recordedtime", "09:12"],
  ])("[LOG1] is refused when its %s is %j, with the attribute named", (attribute, value) => {
    const { entry: none, problem } = readEntry({ ...WIRE, [attribute]: value });
    expect(none).toBeNull();
    expect(worded(problem)).toBe(`its attribute "${attribute}" is missing or wrong`);
  });

  it.each([null, 7, "text", [], undefined])("[LOG1] is not made of %j", (value) => {
    expect(readEntry(value).entry).toBeNull();
  });

  it("is refused when it is nested so deep that nobody could compare it", () => {
    const deep = JSON.parse(`${"[".repeat(5000)}${"]".repeat(5000)}`) as unknown;
    expect(worded(readEntry({ ...WIRE, data: { step: "a", deep } }).problem)).toBe("it is nested too deeply");
    expect(readEntry({ ...WIRE, data: { step: "a", deep: [[[[[[[[[[1]]]]]]]]]] } }).problem).toBeNull();
  });

  it("[LOG4] of an unknown type is kept, with the reason", () => {
    const sealed = entry({ type: "tetherline.source.sealed", data: {} });
    expect(worded(sealed.read)).toEqual({
      fact: null,
      problem: '"tetherline.source.sealed" is not yet understood',
    });
    expect(isFromNewerVersion(sealed.wire)).toBe(true);
    expect(worded(entry({ type: "other.thing" }).read.problem)).toBe('"other.thing" is not yet understood');
    expect(entry({ type: "tetherline.toString" }).read.fact).toBeNull();
  });

  it("[AMD4] that needs a newer version of the log is kept and not understood, though its type is known", () => {
    const data = { changes: [{ drop: "a" }], reason: "late", needs: 2 };
    expect(entry({ type: "tetherline.plan.amended", data }).read.problem).toBeNull();
    for (const type of ["tetherline.plan.amended", "tetherline.step.done"]) {
      const newer = entry({ type, data: { ...data, step: "a", needs: 3 } });
      expect(newer.read.fact).toBeNull();
      expect(worded(newer.read.problem)).toBe(
        `a newer version of the program is needed to understand this ${type}`,
      );
      expect(isFromNewerVersion(newer.wire)).toBe(true);
    }
    expect(isFromNewerVersion({ type: "tetherline.step.done", data: {} })).toBe(false);
  });

  it.each([
    ["tetherline.plan.amended", { changes: [] }],
    ["tetherline.plan.amended", { changes: { drop: "a" }, reason: "" }],
    ["tetherline.plan.amended", { changes: [], reason: "", needs: "2" }],
    ["tetherline.amendment.seen", { amendment: "0000000001" }],
    ["tetherline.step.done", {}],
    ["tetherline.step.done", { step: 7 }],
    ["tetherline.record.taken", { step: "a", record: "r", value: "6" }],
    ["tetherline.record.taken", { step: "a", record: "r", value: null }],
    ["tetherline.walk.opened", { mode: "live" }],
    ["tetherline.walk.closed", { end: "stopped" }],
    ["tetherline.item.moved", { item: "bag", to: { planet: "x" } }],
    ["tetherline.entry.struck", { source: "/devices/x" }],
  ])("[LOG4] of type %s with data %j is kept, with the reason", (type, data) => {
    const { read } = entry({ type, data });
    expect(read.fact).toBeNull();
    expect(worded(read.problem)).toMatch(/^its data is not what tetherline\.\S+ needs/);
  });

  test.prop([
    fc.jsonValue(),
    fc.constantFrom("tetherline.step.done", "tetherline.walk.opened", "tetherline.note.made"),
  ])("[LOG4] of any data is read without throwing", (data, type) => {
    const { read } = entry({ type, data });
    expect(read.fact === null).toBe(read.problem !== null);
  });
});

describe("the order of entries", () => {
  it("[LOG3] is by hlc, then source, then sequence", () => {
    const ordered = [
      entry({ hlc: "000000000000001-0000", source: "/z", sequence: "0000000009" }),
      entry({ hlc: "000000000000001-0001", source: "/a", sequence: "0000000005" }),
      entry({ hlc: "000000000000001-0001", source: "/b", sequence: "0000000001" }),
      entry({ hlc: "000000000000001-0001", source: "/b", sequence: "0000000002" }),
      entry({ hlc: "000000000000002-0000", source: "/a", sequence: "0000000001" }),
    ];
    expect([...ordered].reverse().sort(compareEntries)).toEqual(ordered);
  });
});

describe("merging", () => {
  it("[LOG3] drops duplicates, also of entries whose keys were written in another order", () => {
    const one = entry({});
    const other = entryFrom(Object.fromEntries(Object.entries(WIRE).reverse()));
    expect(mergeEntries([one, copyOf(one), other, one])).toEqual({ ordered: [one], conflicting: [] });
  });

  it("[LOG1] [LOG3] takes the same of several entries with one source and id on every device, and keeps the others", () => {
    const clash = [1, 2, 3].map((step) => entry({ data: { step: `s${step}` } }));
    const orders = [
      [0, 1, 2],
      [2, 1, 0],
      [1, 2, 0],
      [1, 0, 2],
      [2, 0, 1],
      [0, 2, 1],
    ];
    const merged = orders.map((order) => mergeEntries(order.flatMap((index) => clash[index] ?? [])));
    for (const one of merged) {
      expect(one.ordered).toEqual([clash[0]]);
      expect(one.conflicting).toEqual([clash[1], clash[2]]);
    }
  });

  it("[LOG1] tells entries of different sources apart by source and id", () => {
    const all = [
      entry({ source: "/a", id: "1" }),
      entry({ source: "/a", id: "2" }),
      entry({ source: "/b", id: "1" }),
    ];
    expect(new Set(all.map(keyOf)).size).toBe(3);
    expect(mergeEntries(all).ordered).toHaveLength(3);
  });
});

describe("a log in JSON Lines", () => {
  it("[LOG1] goes out and comes in again unchanged, line by line", () => {
    const entries = [
      entry({}),
      entry({ id: "8", data: { step: 'a"b\n\u2028' } }),
      entry({ id: "9", type: "tetherline.later" }),
    ];
    const text = writeLines(entries);
    expect(text.endsWith("\n")).toBe(true);
    expect(text.trimEnd().split("\n")).toHaveLength(3);
    expect(readLines(text)).toEqual({ entries, problems: [] });
    expect(readLines(`\uFEFF${text.replaceAll("\n", "\r\n")}\r\n`)).toEqual({ entries, problems: [] });
  });

  it("[LOG1] says which lines are no entries, and keeps the rest", () => {
    const text = `{"half":\n\n${writeLines([entry({})])}[]\n{"specversion":"1.0"}\n`;
    const { entries, problems } = readLines(text);
    expect(entries).toHaveLength(1);
    expect(worded(problems)).toEqual([
      { line: 1, problem: "it is not JSON" },
      { line: 4, problem: "it is not a JSON object" },
      { line: 5, problem: 'its attribute "id" is missing or wrong' },
    ]);
  });

  test.prop([fc.string()])("[LOG1] is read from any text without throwing", (text) => {
    const { entries } = readLines(text);
    expect(entries).toEqual([] satisfies Entry[]);
  });
});

describe("stamping", () => {
  const draft = { name: "step.done", data: { step: "a" }, at: 5_000 as Instant, actor: "iv" } as const;
  const walk = "walk-1" as WalkId;

  it("[LOG1] gives the next number of the source, and a hybrid time after all that was seen", () => {
    const made = stamp(
      draft,
      walk,
      { source: "/devices/x", made: 6, seen: "000000000009000-0003" as never },
      8_000 as Instant,
    );
    expect(made.wire).toMatchObject({
      id: "0000000007",
      sequence: "0000000007",
      hlc: "000000000009000-0004",
      time: "1970-01-01T00:00:05.000Z",
      recordedtime: "1970-01-01T00:00:08.000Z",
      subject: "walk-1",
      type: "tetherline.step.done",
    });
  });

  it("refuses to write what it could not read back", () => {
    const pen = { source: "/devices/x", made: 0, seen: null };
    const wrong = {
      ...draft,
      name: "record.taken",
      data: { step: "a", record: "r", value: Number.NaN },
    } as const;
    expect(() => stamp(wrong, walk, pen, 0 as Instant)).toThrow(UnreadableEntryError);
    expect(() => stamp(draft, walk, { ...pen, source: "two words" }, 0 as Instant)).toThrow(
      UnreadableEntryError,
    );
  });
});
