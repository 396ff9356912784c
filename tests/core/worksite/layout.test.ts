import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { PlaceId } from "../../../src/core/units/index.ts";
import { groundOf, layoutChanges, layoutOf } from "../../../src/core/worksite/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

type Places = ProcedureFile["places"];
type Routes = ProcedureFile["routes"];

const siteOf = (places: Places, routes: Routes = []) =>
  procedureOf(fileWith([step("look", "iv", 5)], { places, routes }));
const named = (...ids: string[]) => ids.map((id) => ({ id }));
const way = (a: string, b: string, length: number): NonNullable<Routes>[number] => ({
  between: [a, b],
  length,
});

const layout = (places: Places, routes: Routes = []) => {
  const found = layoutOf(siteOf(places, routes));
  const at = (id: string) => {
    const point = found.places.get(id as PlaceId);
    if (!point) throw new Error(`${id} is nowhere`);
    return point;
  };
  const apart = (a: string, b: string) => Math.hypot(at(a).x - at(b).x, at(a).y - at(b).y);
  return { ...found, at, apart };
};

const isEverywhere = (found: ReturnType<typeof layoutOf>) =>
  [...found.places.values()].every(({ x, y, z }) => [x, y, z].every(Number.isFinite));

describe("where places lie", () => {
  it("[MAP2] takes positions as given, and is then no sketch", () => {
    const found = layout(
      [
        { id: "a", x: 0, y: 0 },
        { id: "b", x: 3, y: 4, z: 12 },
      ],
      [way("a", "b", 13)],
    );
    expect(found.at("b")).toEqual({ x: 3, y: 4, z: 12 });
    expect([found.isSketch, found.hasHeight, found.laidOut.size]).toEqual([false, true, 0]);
  });

  it("[MAP2] is a sketch where a way is shorter than the straight line between its ends", () => {
    const places = [
      { id: "a", x: 0, y: 0 },
      { id: "b", x: 10, y: 0 },
    ];
    expect(layout(places, [way("a", "b", 9.6)]).isSketch).toBe(false);
    expect(layout(places, [way("a", "b", 9)]).isSketch).toBe(true);
    expect(layout(places, [way("a", "b", 40)]).isSketch).toBe(false);
  });

  it("[MAP2] lays places out by the lengths of the ways, and says that it did", () => {
    const found = layout(named("a", "b", "c"), [way("a", "b", 4), way("b", "c", 6)]);
    expect(found.isSketch).toBe(true);
    expect(found.apart("a", "b")).toBeCloseTo(4, 1);
    expect(found.apart("b", "c")).toBeCloseTo(6, 1);
    expect(found.apart("a", "c")).toBeCloseTo(10, 1);
  });

  it("[MAP2] leaves given places where they are and lays the others out round them", () => {
    const found = layout(
      [{ id: "a", x: 5, y: 5 }, { id: "b", x: 5, y: 15 }, { id: "c" }],
      [way("a", "b", 10), way("b", "c", 7)],
    );
    expect([found.at("a"), found.at("b")]).toEqual([
      { x: 5, y: 5, z: 0 },
      { x: 5, y: 15, z: 0 },
    ]);
    expect(found.apart("b", "c")).toBeCloseTo(7, 1);
    expect([...found.laidOut]).toEqual(["c"]);
  });

  it("[MAP2] takes a place with x alone for one without a position", () => {
    expect([
      ...layout([
        { id: "a", x: 3 },
        { id: "b", x: 1, y: 1 },
      ]).laidOut,
    ]).toEqual(["a"]);
  });

  it("[MAP2] puts parts that nothing joins side by side", () => {
    const found = layout(named("a", "b", "c", "d", "e"), [way("a", "b", 5), way("d", "e", 5)]);
    const ids = ["a", "b", "c", "d", "e"];
    for (const one of ids)
      for (const other of ids.filter((id) => id > one)) expect(found.apart(one, other)).toBeGreaterThan(0.9);
  });

  it("[MAP2] gives one place, places without ways, ways of no length and thousands of places a position", () => {
    expect(isEverywhere(layout([]))).toBe(true);
    expect(isEverywhere(layout(named("a")))).toBe(true);
    const touching = layout(named("a", "b", "c"), [way("a", "b", 0), way("b", "c", 10)]);
    expect(isEverywhere(touching)).toBe(true);
    expect(touching.apart("a", "b")).toBeGreaterThan(0);
    const still = layout(
      [{ id: "a", x: 1, y: 1 }, { id: "b", x: 1, y: 1 }, { id: "c" }],
      [way("a", "c", 3), way("b", "c", 3)],
    );
    expect(still.apart("a", "b")).toBe(0);
    expect(still.apart("a", "c")).toBeCloseTo(3, 1);
    const many = layout(Array.from({ length: 3000 }, (_, index) => ({ id: `p${index}` })));
    expect(new Set([...many.places.values()].map(({ x, y }) => `${x} ${y}`)).size).toBe(3000);
  });

  it("[MAP2] is the same for the same file", () => {
    const routes = [way("a", "b", 5), way("b", "c", 7), way("c", "a", 4), way("c", "d", 9)];
    const [one, other] = [
      siteOf(named("a", "b", "c", "d"), routes),
      siteOf(named("a", "b", "c", "d"), routes),
    ];
    expect([...layoutOf(one).places]).toEqual([...layoutOf(other).places]);
  });

  it("[MAP2] can be kept in the file, without touching what the file says already", () => {
    const procedure = siteOf([{ id: "a", x: 0, y: 0 }, { id: "b" }], [way("a", "b", 8)]);
    const [change, ...others] = layoutChanges(procedure);
    expect(others).toEqual([]);
    expect(change).toMatchObject({ change: "b", list: "places" });
    const { x, y } = (change as unknown as { set: { x: number; y: number } }).set;
    expect(Math.hypot(x, y)).toBeCloseTo(8, 0);
  });
});

describe("a point on the map", () => {
  it("[MAP2] stands for the metres that are drawn there", () => {
    const place = fc.record({
      x: fc.integer({ min: -500, max: 500 }),
      y: fc.integer({ min: -500, max: 500 }),
    });
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (all, zoom) => {
          const places = all.map((one, index) => ({ id: `p${index}`, ...one }));
          const { frame } = groundOf(siteOf(places), { width: 620, height: 400, zoom }, inWords);
          for (const { x, y } of all) {
            const back = frame.fromPlan(frame.toPlan({ x, y, z: 0 }));
            expect(back.x).toBeCloseTo(x, 6);
            expect(back.y).toBeCloseTo(y, 6);
          }
        },
      ),
    );
  });
});
