import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { happensBefore, MOST_RACES, networkOf, racesOf } from "../../../src/core/order/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { AS_EXPECTED, activityOf } from "../../../src/core/procedure/index.ts";
import { outlineFrom, step } from "../procedure-builder.ts";

const networkFrom = (outline: Outline) => networkOf(outline, activityOf(outline, AS_EXPECTED, true));
const racesIn = (outline: Outline) => racesOf(happensBefore(networkFrom(outline)));

const ITEMS: NonNullable<ProcedureFile["items"]> = [
  { id: "bag", start: { crew: "ev1" } },
  { id: "wrench", start: { item: "bag" } },
  { id: "case", start: { crew: "iv" } },
];
const take = (item: string, crew: string) => [{ item, to: { crew } }];

describe("a race", () => {
  it("[ORD3] is two concurrent steps that move the same item", () => {
    const outline = outlineFrom(
      [
        step("a", "ev1", 1, { moves: take("case", "ev1") }),
        step("b", "ev2", 1, { moves: take("case", "ev2") }),
        step("c", "ev2", 1, { moves: take("case", "ev2"), after: ["a"] }),
      ],
      { items: ITEMS },
    );
    expect(racesIn(outline)).toEqual({
      complete: true,
      races: [{ item: "case", steps: [0, 1], mover: 0, other: 1, need: "moves", handled: "case" }],
    });
  });

  it("[ORD3] is a bag carried off while something is taken out of it, or put into it", () => {
    const outline = outlineFrom(
      [
        step("carry", "ev1", 1, { moves: take("bag", "iv") }),
        step("take", "ev2", 1, { moves: take("wrench", "ev2") }),
        step("put", "iv", 1, { moves: [{ item: "case", to: { item: "bag" } }] }),
      ],
      { items: ITEMS },
    );
    expect(racesIn(outline).races).toMatchObject([
      { item: "bag", steps: [0, 1], mover: 0, other: 1, need: "takes-out", handled: "wrench" },
      { item: "bag", steps: [0, 2], mover: 0, other: 2, need: "puts-in", handled: "case" },
    ]);
  });

  it("[ORD3] is none once the item is out of the bag", () => {
    const outline = outlineFrom(
      [
        step("take", "ev2", 1, { moves: take("wrench", "ev2") }),
        step("pass", "ev2", 1, { moves: take("wrench", "ev1") }),
        step("carry", "ev1", 1, { moves: take("bag", "iv"), after: ["take"] }),
      ],
      { items: ITEMS },
    );
    expect(racesIn(outline).races).toEqual([]);
  });

  it("[ORD3] stops counting when there are far too many", () => {
    const steps = Array.from({ length: 80 }, (_, index) =>
      step(`s${index}`, index % 2 ? "ev1" : "ev2", 1, { moves: take("case", "ev1") }),
    );
    const { races, complete } = racesIn(outlineFrom(steps, { items: ITEMS }));
    expect(complete).toBe(false);
    expect(races).toHaveLength(MOST_RACES);
  });

  const LOOSE = ["a", "b", "c", "d"] as const;
  const drawnMove = fc.record({
    item: fc.constantFrom(...LOOSE),
    to: fc.oneof(
      fc.constant({ crew: "ev1" }),
      fc.constantFrom(...LOOSE).map((item) => ({ item })),
    ),
  });
  const drawnSteps = fc.array(
    fc.record({
      by: fc.oneof(
        { weight: 5, arbitrary: fc.constantFrom(["ev1"], ["ev2"], ["iv"]) },
        { weight: 1, arbitrary: fc.constant(["ev1", "ev2"]) },
      ),
      moves: fc.array(drawnMove, { maxLength: 2 }),
      after: fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 1 }),
    }),
    { minLength: 2, maxLength: 6 },
  );
  const drawnStarts = fc.tuple(fc.boolean(), fc.boolean(), fc.boolean());
  test.prop([drawnSteps, drawnStarts], { numRuns: 400 })(
    "[ORD3] is what some interleaving shows, and nothing else is",
    (drawn, inNext) => {
      const outline = outlineFrom(
        drawn.map(({ by, moves, after }, index) =>
          step(`s${index}`, by, 1, {
            moves: moves.filter(({ item, to }) => !("item" in to && to.item === item)),
            after: after.filter((back) => back <= index).map((back) => `s${index - back}`),
          }),
        ),
        {
          items: LOOSE.map((id, index) => ({
            id,
            start: inNext[index] ? { item: LOOSE[index + 1] ?? "d" } : { crew: "ev1" },
          })),
        },
      );
      expect(
        racesIn(outline)
          .races.map(({ item, steps }) => `${item} ${steps.join(" ")}`)
          .sort(),
      ).toEqual(racesByInterleaving(outline));
    },
  );
});

/** Goes through every order the steps may be done in; wherever two may be done next, sees what each moves and needs as things are then. */
function racesByInterleaving(outline: Outline): string[] {
  const { before } = networkFrom(outline);
  const found = new Set<string>();
  const start = new Map<string, string | null>(
    outline.procedure.items.map(({ id, start }) => [id, "item" in start ? start.item : null]),
  );
  const touched = (index: number, custody: ReadonlyMap<string, string | null>) => {
    const now = new Map(custody);
    const moved = new Set<string>();
    const needed = new Set<string>();
    const chain = (from: string | null | undefined) => {
      const seen = new Set<string>();
      for (let at = from; at != null && !seen.has(at); at = now.get(at)) seen.add(at);
      return seen;
    };
    for (const { item, to } of outline.steps[index]?.step.moves ?? []) {
      moved.add(item);
      const bag = "item" in to ? to.item : null;
      for (const one of [...chain(item), ...chain(bag)]) needed.add(one);
      now.set(item, bag);
    }
    return { moved, needed, now };
  };
  const visited = new Set<string>();
  const go = (done: ReadonlySet<number>, custody: ReadonlyMap<string, string | null>) => {
    const key = JSON.stringify([[...done].sort(), [...custody]]);
    if (visited.has(key)) return;
    visited.add(key);
    const next = outline.steps
      .map(({ index }) => index)
      .filter((index) => !done.has(index) && (before[index] ?? []).every(({ from }) => done.has(from)));
    for (const first of next) {
      const one = touched(first, custody);
      for (const second of next) {
        if (second === first) continue;
        const { needed } = touched(second, custody);
        for (const item of one.moved) {
          if (needed.has(item)) found.add(`${item} ${[first, second].sort((a, b) => a - b).join(" ")}`);
        }
      }
      go(new Set([...done, first]), one.now);
    }
  };
  go(new Set(), start);
  return [...found].sort();
}
