import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import type { BraidRow, BraidScale, PlacedRow } from "../../../src/app/braid/braid-geometry.ts";
import { knotX, strandPath, strandX, throughX } from "../../../src/app/braid/braid-geometry.ts";
import { keepSegments, segmentsOf } from "../../../src/app/braid/braid-segments.ts";

const scales: readonly BraidScale[] = [
  { gap: 40, margin: 26, marker: 15 },
  { gap: 21, margin: 14, marker: 12 },
];
const scale = fc.constantFrom(...scales);
const lanesTogether = fc.uniqueArray(fc.integer({ min: 0, max: 5 }), { minLength: 2, maxLength: 6 });

test.prop([lanesTogether, scale])(
  "a knot never lies on a strand, and between the outermost of those it ties",
  (lanes, at) => {
    const x = knotX(lanes, at);
    for (let lane = 0; lane < 6; lane += 1) {
      expect(Math.abs(x - strandX(lane, at))).toBeGreaterThanOrEqual(at.gap / 2);
    }
    expect(x).toBeGreaterThan(strandX(Math.min(...lanes), at));
    expect(x).toBeLessThan(strandX(Math.max(...lanes), at));
  },
);

test.prop([lanesTogether, scale])(
  "strands go through a knot side by side in their own order",
  (lanes, at) => {
    const row: BraidRow = { key: "joint", lanes, stage: "later" };
    const through = [...lanes].sort((a, b) => a - b).map((lane) => throughX(row, lane, at));
    expect(through).toEqual([...through].sort((a, b) => a - b));
    expect(new Set(through).size).toBe(lanes.length);
  },
);

it("a strand of somebody who takes no part goes straight past a knot", () => {
  const rows: PlacedRow[] = [{ key: "joint", lanes: [0, 2], stage: "later", y: 100 }];
  const [wide] = scales;
  if (!wide) throw new Error("no scale");
  expect(strandPath({ lane: 1, rows, end: 200, scale: wide, hang: null })).toBe(
    `M${strandX(1, wide)} 0 L${strandX(1, wide)} 200`,
  );
  expect(strandPath({ lane: 0, rows, end: 200, scale: wide, hang: null })).toContain("C");
});

/** Rows of several tasks, each begun by a heading, 50 px apart. */
const rowsOfTasks = fc
  .array(fc.array(fc.subarray([0, 1, 2], { minLength: 1 }), { minLength: 1, maxLength: 6 }), {
    minLength: 1,
    maxLength: 5,
  })
  .map((tasks) =>
    tasks
      .flatMap((steps, task) => [
        { key: `task ${task}`, lanes: [] as number[], stage: "later" as const },
        ...steps.map((lanes, step) => ({ key: `${task}.${step}`, lanes, stage: "later" as const })),
      ])
      .map((row, index): PlacedRow => ({ ...row, y: index * 50 + 25 })),
  );

test.prop([rowsOfTasks, scale])(
  "segments together are as high as the list and hold every step once",
  (rows, at) => {
    const height = rows.length * 50;
    const segments = segmentsOf({ rows, markers: [], lanes: 3, height, scale: at });
    expect(segments.reduce((sum, segment) => sum + segment.height, 0)).toBe(height);
    expect(segments.flatMap((segment) => segment.rows.map(({ key }) => key))).toEqual(
      rows.filter(({ lanes }) => lanes.length > 0).map(({ key }) => key),
    );
    let top = 0;
    for (const segment of segments) {
      for (const row of segment.rows) {
        expect(row.y + top).toBe(rows.find(({ key }) => key === row.key)?.y);
      }
      top += segment.height;
    }
  },
);

test.prop([rowsOfTasks, fc.integer({ min: 1, max: 90 })])(
  "what only moved down is not drawn again",
  (rows, by) => {
    const [at] = scales;
    if (!at) throw new Error("no scale");
    const height = rows.length * 50;
    const second = rows.findIndex(({ key }) => key === "task 1");
    fc.pre(second > 0);
    const moved = rows.map((row, index) => (index >= second ? { ...row, y: row.y + by } : row));
    const before = segmentsOf({ rows, markers: [], lanes: 3, height, scale: at });
    const after = keepSegments(
      before,
      segmentsOf({ rows: moved, markers: [], lanes: 3, height: height + by, scale: at }),
    );
    // The first two meet where it moved; from the third on nothing looks otherwise.
    for (const [index, segment] of after.entries()) if (index > 1) expect(segment).toBe(before[index]);
  },
);

it("the strand of a waiting crew member hangs loose down to the step it waits for, over several tasks", () => {
  const [at] = scales;
  if (!at) throw new Error("no scale");
  const rows: PlacedRow[] = [
    { key: "task 0", lanes: [], stage: "later", y: 25 },
    { key: "a", lanes: [0], stage: "done", y: 75 },
    { key: "task 1", lanes: [], stage: "later", y: 225 },
    { key: "b", lanes: [1], stage: "working", y: 275 },
    { key: "task 2", lanes: [], stage: "later", y: 425 },
    { key: "c", lanes: [0, 1], stage: "waiting", y: 475 },
  ];
  const segments = segmentsOf({
    rows,
    markers: [{ lane: 0, at: "c", waiting: true }],
    lanes: 2,
    height: 600,
    scale: at,
  });
  const loose = segments.map(({ paths }) => paths.find(({ lane }) => lane === 0)?.d.includes("q"));
  expect(loose).toEqual([true, true, true]);
  expect(segments[2]?.markers).toEqual([expect.objectContaining({ lane: 0, ring: 475 - 20 - (425 - 18) })]);
});

it("the strands pass by a step that was taken out, which ties none of them", () => {
  const [wide] = scales;
  if (!wide) throw new Error("no scale");
  const shared = { markers: [], lanes: 2, height: 300, scale: wide };
  const later = (key: string, y: number): PlacedRow => ({ key, lanes: [0, 1], stage: "later", y });
  const gone: PlacedRow = { key: "gone b", lanes: [0, 1], stage: "gone", y: 150 };
  const drawn = (rows: PlacedRow[]) =>
    segmentsOf({ ...shared, rows }).flatMap(({ paths }) => paths.map(({ d }) => d));
  expect(drawn([later("a", 50), gone, later("c", 250)])).toEqual(drawn([later("a", 50), later("c", 250)]));
});
