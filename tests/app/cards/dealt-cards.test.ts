import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { dealtCards } from "../../../src/app/cards/dealt-cards.ts";

const ROOM = { room: 100, mark: 5 };

describe("steps dealt out over cards", () => {
  it("[CRD2] go to the next card whole when they have room on one", () => {
    expect(dealtCards([[60], [30, 30]], ROOM)).toEqual([
      [{ group: 0, from: 0, to: 1, isContinued: false, goesOn: false }],
      [{ group: 1, from: 0, to: 2, isContinued: false, goesOn: false }],
    ]);
  });

  it("[CRD2] go on on the next card when they are longer than one, and both cards say so", () => {
    expect(dealtCards([[40, 40, 40, 40]], ROOM)).toEqual([
      [{ group: 0, from: 0, to: 2, isContinued: false, goesOn: true }],
      [{ group: 0, from: 2, to: 4, isContinued: true, goesOn: false }],
    ]);
  });

  it("[CRD2] begin on a card of their own where little of one is left", () => {
    const cards = dealtCards([[80], [10, 50, 50]], ROOM);
    expect(cards[1]?.[0]).toMatchObject({ group: 1, from: 0, isContinued: false });
  });

  it("[CRD2] give no card for no step, and refuse a row that no card holds", () => {
    expect(dealtCards([], ROOM)).toEqual([]);
    expect(() => dealtCards([[10, 120]], ROOM)).toThrow(RangeError);
  });

  test.prop(
    [fc.array(fc.array(fc.integer({ min: 1, max: 33 }), { minLength: 1, maxLength: 30 }), { maxLength: 12 })],
    {
      numRuns: 100,
    },
  )("[CRD2] lose no row, keep the order, and never fill a card beyond its room", (heights) => {
    const cards = dealtCards(heights, ROOM);
    const rows = cards
      .flat()
      .flatMap(({ group, from, to }) =>
        Array.from({ length: to - from }, (_, row) => `${group} ${from + row}`),
      );
    expect(rows).toEqual(heights.flatMap((own, group) => own.map((_, row) => `${group} ${row}`)));
    for (const [index, card] of cards.entries()) {
      expect(card.length).toBeGreaterThan(0);
      const used = card.reduce((sum, { group, from, to, isContinued, goesOn }) => {
        const own = heights[group]?.slice(from, to) ?? [];
        return (
          sum + own.reduce((a, b) => a + b, 0) + (isContinued ? ROOM.mark : 0) + (goesOn ? ROOM.mark : 0)
        );
      }, 0);
      expect(used).toBeLessThanOrEqual(ROOM.room);
      const last = card.at(-1);
      const next = cards[index + 1]?.[0];
      expect(last?.goesOn).toBe(next?.isContinued ?? false);
    }
  });
});
