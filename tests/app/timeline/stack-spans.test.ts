import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import { stackSpans } from "../../../src/app/timeline/stack-spans.ts";

it("lets spans that only touch share a row", () => {
  const rows = stackSpans([
    { from: 0, to: 5 },
    { from: 5, to: 9 },
    { from: 4, to: 6 },
  ]).map(({ from, row }) => [from, row]);
  expect(rows).toEqual([
    [0, 0],
    [4, 1],
    [5, 0],
  ]);
});

const spans = fc.array(
  fc.tuple(fc.nat(60), fc.nat(20)).map(([from, length]) => ({ from, to: from + length })),
);

test.prop([spans])("never lays one span on another in the same row", (some) => {
  const stacked = stackSpans(some);
  expect(stacked).toHaveLength(some.length);
  for (const [index, a] of stacked.entries())
    for (const b of stacked.slice(index + 1))
      if (a.row === b.row) expect(a.to <= b.from || b.to <= a.from).toBe(true);
});
