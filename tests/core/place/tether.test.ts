import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { happensBefore, networkOf } from "../../../src/core/order/index.ts";
import {
  lineSpansOf,
  reachFindings,
  routeKey,
  sharedRouteFindings,
  waysOf,
  whereaboutsOf,
} from "../../../src/core/place/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { AS_EXPECTED, activityOf } from "../../../src/core/procedure/index.ts";
import type { PlaceId } from "../../../src/core/units/index.ts";
import { outlineFrom, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

/** hatch – a – b – tip along a rail, and a – side. */
const RAIL: Partial<ProcedureFile> = {
  places: ["hatch", "a", "b", "tip", "side"].map((id) => ({ id, label: id.toUpperCase() })),
  routes: [
    { between: ["hatch", "a"], length: 6, time: "PT1M" },
    { between: ["a", "b"], length: 6, time: "PT1M" },
    { between: ["b", "tip"], length: 6.5, time: "PT1M" },
    { between: ["a", "side"], length: 4, time: "PT1M" },
  ],
};
const tethered = (id: string, length = 15) => ({
  id,
  call: id.toUpperCase(),
  station: "outside" as const,
  start: "hatch",
  tether: { anchor: "hatch", length },
});
const outside = (steps: Parameters<typeof outlineFrom>[0], more: Partial<ProcedureFile> = {}) =>
  outlineFrom(steps, { ...RAIL, crew: [tethered("ev1"), tethered("ev2")], ...more });
const findingsOf = (outline: Outline) => {
  const network = networkOf(outline, activityOf(outline, AS_EXPECTED, true));
  const whereabouts = whereaboutsOf(network);
  return {
    reach: reachFindings(network, whereabouts),
    shared: sharedRouteFindings(happensBefore(network), whereabouts),
  };
};

describe("the reach of a tether", () => {
  it("[PLN7] is its length by the shortest route, exactly as long included", () => {
    const steps = [step("go", "ev1", null, { to: "b" }), step("on", "ev1", null, { to: "tip" })];
    const { reach } = findingsOf(outside([...steps, step("work", "ev1", 5, { at: "tip" })]));
    expect(reach).toMatchObject([
      {
        level: "error",
        code: "tether/out-of-reach",
        pointer: "/tasks/0/steps/1/to",
        steps: ["on", "work"],
        things: ["ev1", "tip", "hatch"],
      },
    ]);
    expect(said(reach[0])).toContain("18.5 m");
    expect(said(reach[0])).toContain("3.5 m too short");
    expect(said(reach[0])).toContain("HATCH");
    expect(findingsOf(outside(steps, { crew: [tethered("ev1", 18.5)] })).reach).toEqual([]);
  });

  it("[PLN7] starts anew where a step moves the anchor, once it is done", () => {
    const { reach } = findingsOf(
      outside([
        step("go", "ev1", null, { to: "b" }),
        step("move", "ev1", 1, { anchor: "b" }),
        step("on", "ev1", null, { to: "tip" }),
        step("home", "ev1", null, { to: "hatch" }),
      ]),
    );
    expect(reach).toEqual([]);
    const tooFar = findingsOf(outside([step("go", "ev1", null, { to: "tip", anchor: "tip" })])).reach;
    expect(tooFar).toMatchObject([{ code: "tether/out-of-reach", steps: ["go"] }]);
  });

  it("[PLN7] is not known where no routes lead, and an anchor is moved only where one is", () => {
    const places = [...(RAIL.places ?? []), { id: "far" }];
    const { reach } = findingsOf(
      outside([step("leap", "ev1", 1, { to: "far" }), step("move", "ev1", 1, { anchor: "a" })], { places }),
    );
    expect(reach).toMatchObject([
      { level: "caution", code: "tether/reach-not-known", steps: ["leap", "move"] },
      { level: "error", code: "tether/anchor-not-there", pointer: "/tasks/0/steps/1/anchor" },
    ]);
  });

  test.prop([
    fc.array(fc.tuple(fc.constantFrom("hatch", "a", "b", "tip", "side"), fc.boolean()), {
      minLength: 1,
      maxLength: 8,
    }),
    fc.integer({ min: 1, max: 20 }),
  ])("[PLN7] is exceeded exactly where the rail says so", (walk, length) => {
    const along = { hatch: 0, a: 6, b: 12, tip: 18.5, side: 6 } as const;
    type At = keyof typeof along;
    const far = (one: At, other: At) => {
      const off = (one === "side") !== (other === "side") ? 4 : 0;
      return Math.abs(along[one] - along[other]) + off;
    };
    const steps = walk.map(([to, moves], index) =>
      step(`s${index}`, "ev1", null, { to, ...(moves ? { anchor: to } : {}) }),
    );
    let [anchor, here]: At[] = ["hatch", "hatch"];
    const beyond: string[] = [];
    for (const [index, [to, moves]] of walk.entries()) {
      if (far(anchor as At, here as At) > length || far(anchor as At, to as At) > length)
        beyond.push(`s${index}`);
      here = to as At;
      if (moves) anchor = here;
    }
    const { reach } = findingsOf(outside(steps, { crew: [tethered("ev1", length)] }));
    expect([...new Set(reach.flatMap((one) => one.steps))].sort()).toEqual(beyond.sort());
  });
});

describe("lines over a shared route", () => {
  const out = (crew: string, to: string, more: object = {}) =>
    step(`${crew}-to-${to}`, crew, null, { to, ...more });

  it("[PLN7] are reported once for each pair and route, with both spans of steps", () => {
    const { shared } = findingsOf(
      outside([
        out("ev1", "b"),
        step("ev1-work", "ev1", 5),
        out("ev1", "hatch"),
        out("ev2", "side"),
        step("ev2-work", "ev2", 5),
      ]),
    );
    expect(shared).toMatchObject([
      {
        level: "advice",
        code: "tether/shared-route",
        steps: ["ev1-to-b", "ev1-to-hatch", "ev2-to-side", "ev2-work"],
        things: ["ev1", "ev2", "a", "hatch"],
        pointer: "/tasks/0/steps/3",
      },
    ]);
    expect(said(shared[0])).toContain('EV1 (from "ev1-to-b" to "ev1-to-hatch")');
  });

  it("[PLN7] are not, when the one is taken up before the other is laid", () => {
    const { shared } = findingsOf(
      outside([out("ev1", "b"), out("ev1", "hatch"), out("ev2", "side", { after: ["ev1-to-hatch"] })]),
    );
    expect(shared).toEqual([]);
  });

  it("[PLN7] are not, once the first has moved its anchor ahead", () => {
    const { shared } = findingsOf(
      outside([
        out("ev1", "a"),
        step("move", "ev1", 1, { anchor: "a" }),
        out("ev1", "b"),
        out("ev2", "a", { after: ["move"] }),
      ]),
    );
    expect(shared).toEqual([]);
  });

  const ROUTES = (RAIL.routes ?? []).map(({ between: [a, b] }) => routeKey(a as PlaceId, b as PlaceId));
  test.prop([
    fc.array(fc.tuple(fc.constantFrom("hatch", "a", "b", "tip", "side"), fc.boolean()), {
      minLength: 2,
      maxLength: 10,
    }),
  ])(
    "[PLN7] a line lies where the walk from the anchor leads when all back-tracking is struck out",
    (walk) => {
      // A ring as well, so that lines can go round.
      const routes = [
        ...(RAIL.routes ?? []),
        { between: ["side", "tip"] as [string, string], length: 3, time: "PT1M" },
      ];
      const outline = outside(
        walk.map(([to, moves], index) =>
          step(`s${index}`, "ev1", null, { to, ...(moves ? { anchor: to } : {}) }),
        ),
        { routes },
      );
      const network = networkOf(outline, activityOf(outline, AS_EXPECTED, true));
      const ways = waysOf(outline.procedure);
      const spans = lineSpansOf(network, whereaboutsOf(network), ways, 0);
      let walked: string[] = ["hatch"];
      for (const [index, [to, moves]] of walk.entries()) {
        const way = ways.quickest(walked.at(-1) as PlaceId, to as PlaceId);
        walked.push(...(way?.places.slice(1) ?? []));
        const line = moves ? [to] : withoutBackTracking(walked);
        if (moves) walked = [to];
        const covered = line.slice(1).map((place, at) => routeKey(line[at] as PlaceId, place as PlaceId));
        if (index === walk.length - 1) continue;
        for (const route of [...ROUTES, routeKey("side" as PlaceId, "tip" as PlaceId)]) {
          const isLaid = (spans.get(route) ?? []).some(({ from, to: end }) => from <= index && index < end);
          expect(isLaid, `${route} after s${index}`).toBe(covered.includes(route));
        }
      }
    },
  );
});

/** Strikes out "x y x" again and again until there is none. */
function withoutBackTracking(walked: readonly string[]): string[] {
  const at = walked.findIndex((place, index) => index > 1 && place === walked[index - 2]);
  return at < 0 ? [...walked] : withoutBackTracking([...walked.slice(0, at - 1), ...walked.slice(at + 1)]);
}
