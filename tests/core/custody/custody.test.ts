import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { custodyAtStart, holderOf, isWithin, moved, movedInTurn } from "../../../src/core/custody/index.ts";
import type { Location } from "../../../src/core/procedure/index.ts";
import type { ItemId } from "../../../src/core/units/index.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const id = (item: string) => item as ItemId;
const to = (location: object) => location as Location;
const start = custodyAtStart(
  procedureOf(
    fileWith([step("a", "ev1", 1)], {
      places: [{ id: "hatch" }],
      items: [
        { id: "bag", start: { crew: "ev1" } },
        { id: "pouch", start: { item: "bag" } },
        { id: "wrench", start: { item: "pouch" } },
        { id: "lamp", start: { place: "hatch" } },
      ],
    }),
  ),
);

describe("custody", () => {
  it("[PRO8] finds who holds an item through whatever it is packed in", () => {
    expect(holderOf(start, id("wrench"))).toEqual({ crew: "ev1" });
    expect(holderOf(start, id("lamp"))).toEqual({ place: "hatch" });
    expect(holderOf(start, id("saw"))).toBeNull();
  });

  it("[PRO8] takes along what is in an item", () => {
    const after = moved(start, id("bag"), to({ crew: "ev2" }));
    expect(after && holderOf(after, id("wrench"))).toEqual({ crew: "ev2" });
    expect(holderOf(start, id("wrench"))).toEqual({ crew: "ev1" });
  });

  it("[PRO8] puts nothing inside itself, however deep", () => {
    expect(moved(start, id("bag"), to({ item: "wrench" }))).toBeNull();
    expect(moved(start, id("bag"), to({ item: "bag" }))).toBeNull();
    expect(isWithin(start, id("wrench"), id("bag"))).toBe(true);
    expect(isWithin(start, id("bag"), id("wrench"))).toBe(false);
  });

  const anyMove = fc.record({
    item: fc.constantFrom("bag", "pouch", "wrench", "lamp").map(id),
    to: fc
      .constantFrom<object>(
        { crew: "ev1" },
        { place: "hatch" },
        { item: "bag" },
        { item: "pouch" },
        { item: "wrench" },
        { item: "lamp" },
      )
      .map(to),
  });
  test.prop([fc.array(anyMove, { maxLength: 30 })])(
    "[PRO8] always has every item with one holder, whatever is moved",
    (moves) => {
      const inTurn = movedInTurn(start, moves);
      const oneByOne = moves.reduce((custody, move) => moved(custody, move.item, move.to) ?? custody, start);
      expect([...inTurn]).toEqual([...oneByOne]);
      for (const item of start.keys()) expect(holderOf(inTurn, item)).not.toBeNull();
    },
  );
});
