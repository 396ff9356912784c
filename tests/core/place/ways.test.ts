import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { networkOf } from "../../../src/core/order/index.ts";
import { waysOf, whereaboutsOf } from "../../../src/core/place/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { AS_EXPECTED, activityOf } from "../../../src/core/procedure/index.ts";
import type { PlaceId } from "../../../src/core/units/index.ts";
import { fileWith, outlineFrom, procedureOf, step } from "../procedure-builder.ts";

const at = (place: string) => place as PlaceId;
const PLACES: ProcedureFile["places"] = ["a", "b", "c", "d", "e"].map((id) => ({ id }));

describe("ways", () => {
  const ways = waysOf(
    procedureOf(
      fileWith([step("x", "ev1", 1)], {
        places: PLACES,
        routes: [
          { between: ["a", "b"], length: 1, time: "PT9M" },
          { between: ["b", "c"], length: 1, time: "PT9M" },
          { between: ["a", "c"], length: 5, time: "PT2M" },
          { between: ["c", "d"], length: 4 },
        ],
      }),
    ),
  );

  it("[PRO6] are quickest by time and shortest by length, in both directions", () => {
    expect(ways.quickest(at("a"), at("c"))).toEqual({ places: ["a", "c"], cost: 120_000 });
    expect(ways.shortest(at("a"), at("c"))).toEqual({ places: ["a", "b", "c"], cost: 2 });
    expect(ways.shortest(at("c"), at("a"))).toEqual({ places: ["c", "b", "a"], cost: 2 });
    expect(ways.quickest(at("a"), at("a"))).toEqual({ places: ["a"], cost: 0 });
  });

  it("[PRO6] have no time where a route has none, and lead nowhere where there is no route", () => {
    expect(ways.quickest(at("a"), at("d"))).toBeNull();
    expect(ways.shortest(at("a"), at("d"))?.cost).toBe(6);
    expect(ways.shortest(at("a"), at("e"))).toBeNull();
  });

  const anyRoutes = fc.array(
    fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 4 }), fc.nat({ max: 20 })).filter(([from, to]) => from !== to),
    { maxLength: 12 },
  );
  test.prop([anyRoutes])("[PRO6] are as short as any other search finds them", (routes) => {
    const ids = PLACES?.map(({ id }) => id) ?? [];
    const found = waysOf(
      procedureOf(
        fileWith([step("x", "ev1", 1)], {
          places: PLACES,
          routes: routes.map(([from, to, length]) => ({
            between: [ids[from] ?? "", ids[to] ?? ""] as [string, string],
            length,
          })),
        }),
      ),
    );
    // Floyd and Warshall's search over all pairs.
    const least = ids.map((_, row) =>
      ids.map((__, column) => (row === column ? 0 : Number.POSITIVE_INFINITY)),
    );
    const cell = (row: number, column: number) => least[row]?.[column] ?? Number.POSITIVE_INFINITY;
    const improve = (row: number, column: number, cost: number) => {
      const line = least[row];
      if (line && cost < cell(row, column)) line[column] = cost;
    };
    for (const [from, to, length] of routes) {
      improve(from, to, length);
      improve(to, from, length);
    }
    for (const via of ids.keys()) {
      for (const row of ids.keys()) {
        for (const column of ids.keys()) improve(row, column, cell(row, via) + cell(via, column));
      }
    }
    for (const [row, from] of ids.entries()) {
      for (const [column, to] of ids.entries()) {
        const way = found.shortest(at(from), at(to));
        expect(way?.cost ?? Number.POSITIVE_INFINITY).toBe(cell(row, column));
        if (way) expect([way.places[0], way.places.at(-1)]).toEqual([from, to]);
      }
    }
  });
});

describe("whereabouts", () => {
  const crew: ProcedureFile["crew"] = [
    { id: "ev1", call: "EV1", station: "outside", start: "a" },
    { id: "iv", call: "IV", station: "inside" },
  ];
  const whereabouts = (steps: Parameters<typeof outlineFrom>[0]) => {
    const outline = outlineFrom(steps, {
      crew,
      places: PLACES,
      routes: [{ between: ["a", "b"], length: 2, time: "PT3M" }],
    });
    return whereaboutsOf(networkOf(outline, activityOf(outline, AS_EXPECTED, true)));
  };

  it("[PRO7] follow a crew member from its start through translations", () => {
    const { from, times, findings } = whereabouts([
      step("one", "ev1", 1),
      step("go", "ev1", null, { to: "b" }),
      step("two", "ev1", 1, { at: "b" }),
      step("look", "iv", 1, { at: "c" }),
    ]);
    expect(from).toEqual([["a"], ["a"], ["b"], [null]]);
    expect(times[1]).toEqual({ low: 180_000, likely: 180_000, high: 180_000 });
    expect(findings).toEqual([]);
  });

  it("[PRO7] report a step done where its performer is not, once, and go on from there", () => {
    const { from, findings } = whereabouts([
      step("two", "ev1", 1, { at: "b" }),
      step("three", "ev1", 1, { at: "b" }),
    ]);
    expect(findings).toMatchObject([{ code: "place/not-there", steps: ["two"], things: ["ev1", "b"] }]);
    expect(from[1]).toEqual(["b"]);
  });

  it("[PRO6] report a translation whose time nobody can tell", () => {
    const lost = whereabouts([step("go", "ev1", null, { to: "c" })]);
    expect(lost.findings).toMatchObject([{ level: "error", code: "place/no-way", things: ["ev1", "c"] }]);
    const inside = whereabouts([step("go", "iv", null, { to: "b" })]);
    expect(inside.findings).toMatchObject([{ code: "place/no-way", steps: ["go"] }]);
  });

  it("[PRO6] take a time of its own for a translation without routes", () => {
    const { times, findings } = whereabouts([step("go", "ev1", 7, { to: "c" })]);
    expect([times[0]?.likely, findings]).toEqual([420_000, []]);
  });
});
