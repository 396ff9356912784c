import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { planOf, seededSource } from "../../src/core/plan/index.ts";
import { outlineOf } from "../../src/core/procedure/index.ts";
import type { Duration } from "../../src/core/units/index.ts";
import { frameOf } from "../../src/core/worksite/frame.ts";
import { leftMessage, momentOf } from "../../src/core/worksite/index.ts";
import { trueLength } from "../../src/core/worksite/layout.ts";
import { placeLabels, slotBoxes } from "../../src/core/worksite/place-labels.ts";
import { leastStress, settled, stressOf } from "../../src/core/worksite/stress.ts";
import { inWords } from "../../src/words/index.ts";
import { fileWith, procedureOf, step } from "../core/procedure-builder.ts";

const VALUES = "../shared/check-values/units-map-changes.json";

interface Case<Data, Expected> {
  readonly id: string;
  readonly data: Data;
  readonly expected: Expected;
}

const cases: readonly Case<never, never>[] = existsSync(VALUES)
  ? JSON.parse(readFileSync(VALUES, "utf8")).cases
  : [];

const caseOf = <Data, Expected>(id: string) =>
  cases.find((one) => one.id === id) as unknown as Case<Data, Expected>;

type Triple = readonly [number, number, number];

describe.skipIf(cases.length === 0)("the worksite against published values", () => {
  it("[MAP2] lays a circle of four out as the square of least stress, which never rises on the way", () => {
    const { data, expected } = caseOf<
      { readonly d: readonly (readonly number[])[] },
      { readonly side: number; readonly diagonal: number; readonly stress: number }
    >("stress-c4");
    const problem = { distances: data.d, fixed: data.d.map(() => null) };
    const points = leastStress(problem, seededSource(1));
    const apart = (a: number, b: number) =>
      Math.hypot((points[a]?.x ?? 0) - (points[b]?.x ?? 0), (points[a]?.y ?? 0) - (points[b]?.y ?? 0));
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 0],
    ] as const)
      expect(Math.abs(apart(a, b) - expected.side)).toBeLessThan(1e-6);
    for (const [a, b] of [
      [0, 2],
      [1, 3],
    ] as const)
      expect(Math.abs(apart(a, b) - expected.diagonal)).toBeLessThan(1e-6);
    expect(Math.abs(stressOf(problem, points) - expected.stress)).toBeLessThan(1e-6);
    const beginning = [
      { x: 0, y: 0 },
      { x: 3, y: 1 },
      { x: -1, y: 2 },
      { x: 0.5, y: 0.1 },
    ];
    const steps = [stressOf(problem, beginning)];
    settled(problem, beginning, (stress) => steps.push(stress));
    for (const [index, stress] of steps.entries())
      if (index > 0) expect(stress).toBeLessThanOrEqual((steps[index - 1] ?? 0) + 1e-12);
  });

  it("[MAP4] gives a label the first free slot in the published order, and covers no other point", () => {
    const { data } = caseOf<
      {
        readonly points: readonly {
          readonly id: string;
          readonly x: number;
          readonly y: number;
          readonly w: number;
          readonly h: number;
        }[];
        readonly gap: number;
      },
      never
    >("label-slots");
    const wishes = data.points.map(({ x, y, w, h }) => ({
      at: { x, y },
      width: w,
      height: h,
      mark: { left: x, top: y, width: 0, height: 0 },
    }));
    const placed = placeLabels(wishes, {
      bounds: { left: -500, top: -500, width: 1000, height: 1000 },
      ways: [],
      number: { width: 12, height: 12 },
      gap: data.gap,
      chance: seededSource(1),
    });
    const upperRight = wishes.map((wish) => slotBoxes(wish, data.gap)[0]);
    expect(placed[1]?.box).toEqual(upperRight[1]);
    expect(placed[0]?.box).not.toEqual(upperRight[0]);
    expect(placed.map(({ kind }) => kind)).toEqual(["beside", "beside", "beside"]);
  });

  it("[MAP4] draws from above x against y and from the side x against z, in one scale", () => {
    const { data, expected } = caseOf<
      { readonly p: readonly Triple[] },
      {
        readonly plan: readonly (readonly [number, number])[];
        readonly side: readonly (readonly [number, number])[];
        readonly trueLengthFromFirst: readonly number[];
      }
    >("plan-and-side");
    const points = data.p.map(([x, y, z]) => ({ x, y, z }));
    const procedure = procedureOf(
      fileWith([step("look", "iv", 5)], {
        places: points.map((point, index) => ({ id: `p${index}`, ...point })),
      }),
    );
    const frame = frameOf(procedure, { width: 800, height: 600, zoom: 1 });
    const [first] = points;
    if (!first) throw new Error("no points");
    const [planZero, sideZero] = [frame.toPlan(first), frame.toSide(first)];
    for (const [index, point] of points.entries()) {
      const [plan, side] = [frame.toPlan(point), frame.toSide(point)];
      const inMetres = (px: number) => px / frame.scale;
      expect(inMetres(plan.x - planZero.x)).toBeCloseTo(expected.plan[index]?.[0] ?? Number.NaN, 9);
      expect(inMetres(planZero.y - plan.y)).toBeCloseTo(expected.plan[index]?.[1] ?? Number.NaN, 9);
      expect(inMetres((side?.x ?? 0) - (sideZero?.x ?? 0))).toBeCloseTo(
        expected.side[index]?.[0] ?? Number.NaN,
        9,
      );
      expect(inMetres((sideZero?.y ?? 0) - (side?.y ?? 0))).toBeCloseTo(
        expected.side[index]?.[1] ?? Number.NaN,
        9,
      );
      expect(trueLength(first, point)).toBeCloseTo(expected.trueLengthFromFirst[index] ?? Number.NaN, 9);
    }
  });

  it("[MAP4] shows what is left of a line along the ways, never the straight line's larger figure", () => {
    const { data, expected } = caseOf<
      {
        readonly length: number;
        readonly ways: readonly (readonly [string, string, number])[];
        readonly path: readonly string[];
      },
      { readonly leftAlongWays: number; readonly alongWays: number }
    >("tether-left");
    const last = data.path.at(-1) ?? "";
    const procedure = procedureOf(
      fileWith([step("out", "ev1", 5, { to: last })], {
        crew: [
          {
            id: "ev1",
            call: "EV1",
            station: "outside",
            start: "hatch",
            tether: { anchor: "hatch", length: data.length },
          },
        ],
        places: data.path.map((id) => ({ id })),
        routes: data.ways.map(([a, b, length]) => ({
          between: [a, b] as [string, string],
          length,
          time: "PT1M",
        })),
      }),
    );
    const course = planOf(outlineOf(procedure)).timeline?.course;
    if (!course) throw new Error("no plan");
    const [ev1] = momentOf(course, course.finish as Duration).people;
    if (!ev1) throw new Error("nobody");
    expect(ev1.line).toMatchObject({ used: expected.alongWays, left: expected.leftAlongWays });
    const left = leftMessage(ev1);
    expect(left && inWords(left.says)).toContain(`${expected.leftAlongWays} m`);
  });
});
