import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { firstBatch } from "../../../src/core/link/index.ts";
import { numberedEntries, numberedEntry } from "../log/numbered-entry.ts";

const longest = (count: number, batchLength: number) => ({ batch: count, batchLength });

describe("[LINK] what is offered at once", () => {
  it("is as many entries as may be, from the first on", () => {
    const entries = numberedEntries(5);
    expect(firstBatch(entries, longest(3, 1e6))).toEqual(entries.slice(0, 3));
    expect(firstBatch(entries, longest(5, 1e6))).toEqual(entries);
    expect(firstBatch([], longest(5, 1e6))).toEqual([]);
  });

  it("is one entry alone when that is too long, and stops before one that would be", () => {
    const long = numberedEntry(1, { data: { text: "x".repeat(5000) } });
    const [two, three] = [numberedEntry(2), numberedEntry(3)];
    expect(firstBatch([long, two], longest(10, 1000))).toEqual([long]);
    expect(firstBatch([two, three, long], longest(10, 1000))).toEqual([two, three]);
  });

  test.prop([
    fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 12 }),
    fc.integer({ min: 1, max: 8 }),
    fc.integer({ min: 1, max: 2500 }),
  ])(
    "keeps to both limits but for a first that is too long, and is as large as they let it be",
    (lengths, batch, batchLength) => {
      const entries = lengths.map((length, index) =>
        numberedEntry(index + 1, { data: { text: "x".repeat(length) } }),
      );
      const first = firstBatch(entries, { batch, batchLength });
      const sizeOf = (count: number) =>
        entries.slice(0, count).reduce((sum, { wire }) => sum + JSON.stringify(wire).length + 1, 0);
      expect(first).toEqual(entries.slice(0, first.length));
      expect(first.length).toBeGreaterThan(0);
      expect(first.length).toBeLessThanOrEqual(batch);
      if (first.length > 1) expect(sizeOf(first.length)).toBeLessThanOrEqual(batchLength);
      const couldBeMore = first.length < Math.min(batch, entries.length);
      if (couldBeMore) expect(sizeOf(first.length + 1)).toBeGreaterThan(batchLength);
    },
  );
});
