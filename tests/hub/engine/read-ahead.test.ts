import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import type { StoredEntry } from "../../../src/hub/engine/index.ts";
import { readAhead } from "../../../src/hub/engine/read-ahead.ts";
import { WALK } from "./written-notes.ts";

const SECOND = "walk-2" as WalkId;
const at = (offset: number): StoredEntry => ({
  ...{
    offset,
    text: "",
    source: "",
    id: String(offset),
    sequence: "",
    received: 0 as Instant,
    via: null,
    check: "",
  },
});
const offsets = (page: readonly StoredEntry[]) => page.map(({ offset }) => offset);

/** Two walks that share offsets, as in a stream of all walks, and how often they were asked. */
class TwoWalks {
  readonly #logs = new Map<WalkId, StoredEntry[]>([
    [WALK, []],
    [SECOND, []],
  ]);
  readonly #ahead: number;
  asked = 0;
  #last = 0;

  /** `ahead` is how many more than the least come. */
  constructor(ahead: number) {
    this.#ahead = ahead;
  }

  append(walk: WalkId, count: number): void {
    for (let turn = 0; turn < count; turn += 1) {
      this.#last += 1;
      this.#logs.get(walk)?.push(at(this.#last));
    }
  }

  behind(walk: WalkId, after: number, limit: number): readonly StoredEntry[] {
    return (this.#logs.get(walk) ?? []).filter(({ offset }) => offset > after).slice(0, limit);
  }

  readonly readOn = async (walk: WalkId, after: number, least: number): Promise<readonly StoredEntry[]> => {
    this.asked += 1;
    const kept = this.behind(walk, after, least + this.#ahead);
    await null;
    return kept;
  };
}

describe("[HUB] reading ahead", () => {
  test("asks once for many pages, and for many who read the same", async () => {
    const walks = new TwoWalks(1000);
    walks.append(WALK, 1000);
    const read = readAhead(walks.readOn);
    const readAll = async () => {
      const all: number[] = [];
      for (let after = 0; ; ) {
        const page = offsets(await read(WALK, after, 50));
        all.push(...page);
        if (page.length < 50) return all;
        after = page.at(-1) ?? 0;
      }
    };
    const all = offsets(walks.behind(WALK, 0, 1000));
    expect(await Promise.all([readAll(), readAll(), readAll()])).toEqual([all, all, all]);
    // Once for all entries, and once behind the last.
    expect(walks.asked).toBe(2);
  });

  test("gives what was there when it was asked for, though an older question is under way", async () => {
    const walks = new TwoWalks(10);
    walks.append(WALK, 2);
    let answer = () => {};
    const held = new Promise<void>((resolve) => {
      answer = resolve;
    });
    const read = readAhead(async (...wish) => {
      const kept = await walks.readOn(...wish);
      if (walks.asked === 1) await held;
      return kept;
    });
    const first = read(WALK, 0, 5);
    await null;
    walks.append(WALK, 1);
    const later = Array.from({ length: 3 }, () => read(WALK, 0, 5));
    answer();
    expect(offsets(await first)).toEqual([1, 2]);
    for (const page of await Promise.all(later)) expect(offsets(page)).toEqual([1, 2, 3]);
    expect(walks.asked).toBe(2);
  });

  test("a failure is not remembered", async () => {
    const walks = new TwoWalks(0);
    walks.append(WALK, 1);
    let fails = true;
    const read = readAhead((...wish) => (fails ? Promise.reject(new Error("gone")) : walks.readOn(...wish)));
    await expect(read(WALK, 0, 1)).rejects.toThrow("gone");
    fails = false;
    expect(offsets(await read(WALK, 0, 1))).toEqual([1]);
  });

  const step = fc.oneof(
    fc.record({ walk: fc.constantFrom(WALK, SECOND), append: fc.integer({ min: 1, max: 30 }) }),
    fc.record({
      walk: fc.constantFrom(WALK, SECOND),
      after: fc.integer({ min: 0, max: 120 }),
      limit: fc.integer({ min: 1, max: 40 }),
    }),
  );
  test.prop([fc.integer({ min: 0, max: 60 }), fc.array(step, { maxLength: 60 })])(
    "gives what is there, whatever was read and appended before",
    async (ahead, steps) => {
      const walks = new TwoWalks(ahead);
      const read = readAhead(walks.readOn);
      for (const one of steps) {
        if ("append" in one) walks.append(one.walk, one.append);
        else {
          const { walk, after, limit } = one;
          expect(offsets(await read(walk, after, limit))).toEqual(offsets(walks.behind(walk, after, limit)));
        }
      }
    },
  );
});
