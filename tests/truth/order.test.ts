import { describe, expect, it } from "vitest";
import type { HappensBefore } from "../../src/core/order/index.ts";
import { deadlockFinding, happensBefore, networkOf, racesOf } from "../../src/core/order/index.ts";
import type { Outline } from "../../src/core/procedure/index.ts";
import { AS_EXPECTED, activityOf } from "../../src/core/procedure/index.ts";
import { outlineFrom, step } from "../core/procedure-builder.ts";
import values from "./fixtures/order.json" with { type: "json" };

/** Ids are lower-case here; the sources write their events in capitals. */
const idOf = (event: string) => event.toLowerCase();

const networkFrom = (outline: Outline) => networkOf(outline, activityOf(outline, AS_EXPECTED, true));

/** Lanes of steps, links between them, and the items that steps move: what the cases about order are made of. */
function outlineOfLanes(
  lanes: Readonly<Record<string, readonly string[]>>,
  precedence: readonly (readonly string[])[],
  items: Readonly<Record<string, readonly string[]>> = {},
): Outline {
  const steps = Object.entries(lanes).flatMap(([lane, events]) =>
    events.map((event) =>
      step(idOf(event), idOf(lane), 1, {
        after: precedence.filter(([, to]) => to === event).map(([from]) => idOf(from ?? "")),
        moves: (items[event] ?? []).map((item) => ({ item, to: { crew: idOf(lane) } })),
      }),
    ),
  );
  return outlineFrom(steps, {
    crew: Object.keys(lanes).map((lane) => ({ id: idOf(lane), call: lane, station: "inside" })),
    items: [...new Set(Object.values(items).flat())].map((id) => ({ id, start: { crew: "a" } })),
  });
}

const index = (outline: Outline, event: string) => outline.step(idOf(event))?.index ?? -1;

function pairs<T>(list: readonly T[]): [T, T][] {
  return list.flatMap((first, at) => list.slice(at + 1).map((second): [T, T] => [first, second]));
}

const sorted = (list: readonly (readonly string[])[]) =>
  list.map((pair) => [...pair].map(idOf).sort().join(" ")).sort();

const concurrentPairs = (outline: Outline, order: HappensBefore) =>
  pairs(outline.steps.map(({ step: { id } }) => id))
    .filter(([a, b]) => order.concurrent(index(outline, a), index(outline, b)))
    .map(([a, b]) => [a, b].sort().join(" "))
    .sort();

describe("order, against values from outside", () => {
  for (const { id, processes, events, clocks, concurrent } of values.happensBefore) {
    it(`[ORD2] ${id}: vector clocks and concurrent pairs`, () => {
      const lanes = Object.fromEntries(
        processes.map((name) => [
          name,
          events.flatMap(([process, event]) => (process === name && event ? [event] : [])),
        ]),
      );
      const messages = events.flatMap(([, event, from]) => (event && from ? [[from, event]] : []));
      const outline = outlineOfLanes(lanes, messages);
      const order = happensBefore(networkFrom(outline));
      for (const [event, clock] of Object.entries(clocks)) {
        expect(order.clock(index(outline, event)), event).toEqual(clock);
      }
      expect(concurrentPairs(outline, order)).toEqual(sorted(concurrent));
    });
  }

  for (const { id, lanes, precedence, items, races, before } of values.races) {
    it(`[ORD3] ${id}: every race and no other, and the whole order`, () => {
      const outline = outlineOfLanes(lanes, precedence, items);
      const order = happensBefore(networkFrom(outline));
      const found = racesOf(order).races.map((race) => [
        race.item,
        ...race.steps.map((at) => outline.steps[at]?.step.id ?? ""),
      ]);
      expect(sorted(found)).toEqual(sorted(races));
      for (const [event, behind] of Object.entries(before)) {
        const found = outline.steps.filter((other) => order.before(index(outline, event), other.index));
        expect(found.map(({ step: { id } }) => id).sort(), event).toEqual([...behind].sort());
      }
    });
  }

  for (const { id, lanes, precedence, stepsOnCycle } of values.deadlocks) {
    it(`[ORD1] ${id}: ${stepsOnCycle ? "a deadlock" : "no deadlock"}`, () => {
      const found = deadlockFinding(networkFrom(outlineOfLanes(lanes, precedence)));
      expect(found === null ? null : [...found.steps].sort()).toEqual(stepsOnCycle);
    });
  }
});
