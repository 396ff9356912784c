import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { GrowingList } from "../../../src/core/walk/growing-list.ts";

describe("a list that only grows", () => {
  test.prop([fc.array(fc.tuple(fc.nat(), fc.integer()), { maxLength: 40 })])(
    "[LOG3] never changes: whatever is added to any of its versions, each keeps its own members",
    (additions) => {
      const lists = [{ list: GrowingList.of<number>(), plain: [] as readonly number[] }];
      for (const [which, member] of additions) {
        const from = lists[which % lists.length];
        if (from) lists.push({ list: from.list.and(member), plain: [...from.plain, member] });
      }
      for (const { list, plain } of lists) {
        expect(list.toArray()).toEqual(plain);
        expect([...list]).toEqual(plain);
        expect(list.length).toBe(plain.length);
        expect(list.last()).toBe(plain.at(-1));
      }
    },
  );
});
