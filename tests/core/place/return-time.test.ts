import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { networkOf } from "../../../src/core/order/index.ts";
import {
  latestTurnBack,
  returnTimeFrom,
  returnTimesOf,
  whereaboutsOf,
} from "../../../src/core/place/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { AS_EXPECTED, activityOf } from "../../../src/core/procedure/index.ts";
import type { Duration, PlaceId } from "../../../src/core/units/index.ts";
import { ofSeconds } from "../../../src/core/units/index.ts";
import { outlineFrom, step, task } from "../procedure-builder.ts";

const minutes = (value: number) => ofSeconds(value * 60);
const laidOut = (outline: Outline) => {
  const network = networkOf(outline, activityOf(outline, AS_EXPECTED, true));
  return { network, whereabouts: whereaboutsOf(network) };
};
const place = (id: string, refuge = false) => ({ id, refuge });
const CREW: ProcedureFile["crew"] = [
  { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
  { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
  { id: "iv", call: "IV", station: "inside" },
];

describe("the return time", () => {
  const outline = outlineFrom(
    [
      task("work", [
        step("out", "ev1", null, { to: "far" }),
        step("do", ["ev1", "iv"], 10),
        step("other", "ev2", 10),
      ]),
      task("stow", [step("stow", "ev1", 4), step("close", ["ev1", "ev2"], 3)], { closeout: true }),
      task("in", [step("in", "ev1", null, { to: "hatch" })]),
    ],
    {
      crew: CREW,
      places: [place("hatch", true), place("shelter", true), place("far"), place("off")],
      routes: [
        { between: ["hatch", "far"], length: 1, time: "PT9M" },
        { between: ["shelter", "far"], length: 50, time: "PT7M" },
      ],
    },
  );
  const { network, whereabouts } = laidOut(outline);

  it("[PLN6] is the quickest way to the nearest refuge and the closeout that is left in the lane", () => {
    const returns = returnTimesOf(network, whereabouts);
    expect(returns[0]).toEqual([
      { from: "far", refuge: "shelter", way: minutes(7), closeout: minutes(7), total: minutes(14) },
    ]);
    expect(returns[1]?.[1]).toBeNull();
    expect(returns[2]).toEqual([
      { from: "hatch", refuge: "hatch", way: 0, closeout: minutes(3), total: minutes(3) },
    ]);
    expect(returns[3]?.[0]?.total).toBe(minutes(10));
    expect(returns[5]?.[0]?.total).toBe(0);
  });

  it("[PLN6] can be asked for in a walk, from where one is and with what is left", () => {
    const found = returnTimeFrom(outline, whereabouts, "far" as PlaceId, [4]);
    expect(found).toMatchObject({ refuge: "shelter", way: minutes(7), closeout: minutes(3) });
    expect(found && latestTurnBack(minutes(390), found)).toBe(minutes(380));
    expect(returnTimeFrom(outline, whereabouts, "off" as PlaceId, [])).toBeNull();
  });

  const NAMES = ["p0", "p1", "p2", "p3", "p4"] as const;
  const drawnRoute = fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 4 }), fc.integer({ min: 1, max: 30 }));
  test.prop([fc.array(drawnRoute, { maxLength: 8 }), fc.subarray([...NAMES], { minLength: 1 })])(
    "[PLN6] is the least over all ways to all refuges",
    (drawn, refuges) => {
      const routes = drawn.filter(([a, b]) => a !== b);
      const { procedure } = outlineFrom([step("x", "ev1", 1)], {
        crew: [{ id: "ev1", call: "EV1", station: "outside", start: "p0" }],
        places: NAMES.map((name) => place(name, refuges.includes(name))),
        routes: routes.map(([a, b, time]) => ({
          between: [`p${a}`, `p${b}`],
          length: 1,
          time: `PT${time}M`,
        })),
      });
      // Floyd (1962) and Warshall (1962) over the five places.
      const far = NAMES.map((_, a) => NAMES.map((_, b) => (a === b ? 0 : Number.POSITIVE_INFINITY)));
      const at = (a: number, b: number) => far[a]?.[b] ?? Number.POSITIVE_INFINITY;
      const put = (a: number, b: number, time: number) => {
        const row = far[a];
        if (row) row[b] = Math.min(at(a, b), time);
      };
      for (const [a, b, time] of routes) {
        put(a, b, time);
        put(b, a, time);
      }
      for (const k of NAMES.keys()) {
        for (const a of NAMES.keys()) for (const b of NAMES.keys()) put(a, b, at(a, k) + at(k, b));
      }
      for (const [index, name] of NAMES.entries()) {
        const least = Math.min(...refuges.map((refuge) => at(index, NAMES.indexOf(refuge))));
        const outline = outlineFrom([step("x", "ev1", 1)]);
        const found = returnTimeFrom({ ...outline, procedure }, { times: [] }, name as string as PlaceId, []);
        expect(found?.total ?? null).toBe(least === Number.POSITIVE_INFINITY ? null : minutes(least));
      }
    },
  );

  it("[PLN6] never grows as closeout is done", () => {
    const returns = returnTimesOf(network, whereabouts);
    const ev1 = network.lanes[0] ?? [];
    const closeouts = ev1.map((index) => returns[index]?.[0]?.closeout ?? (Number.NaN as Duration));
    expect([...closeouts].sort((a, b) => b - a)).toEqual(closeouts);
  });
});
