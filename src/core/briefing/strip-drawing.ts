import { lanesInTime, waitsOf } from "../course/index.ts";
import type { Duration } from "../units/index.ts";
import type { DrawnNode } from "../worksite/index.ts";
import { momentOf } from "../worksite/index.ts";
import type { Briefing } from "./briefing.ts";

/** The timeline of a briefing as a strip: a row for the tasks and one for each crew member, from PET 0 to the finish. */
export interface Strip {
  readonly width: number;
  readonly height: number;
  /** The left and right end of the time in px. Time runs evenly between them. */
  readonly from: number;
  readonly to: number;
  readonly nodes: readonly DrawnNode[];
}

const WIDTH = 1000;
const HEAD = 64;
const ROW = 20;
const TASKS = 22;

const node = (tag: string, attributes: DrawnNode["attributes"], text: string | null = null): DrawnNode => ({
  tag,
  attributes,
  children: [],
  text,
});

const classes = (...names: readonly string[]): string => names.join(" ");

const px = (value: number): number => Math.round(value * 10) / 10;

/** Draws the strip of a briefing. A skipped step is a mark, a wait a thin line, a joint step a bar in each row. */
export function stripOf({ course, chapters, finish }: Briefing): Strip {
  const at = (pet: Duration) => px(HEAD + ((WIDTH - HEAD - 4) * pet) / Math.max(1, finish));
  const wide = (start: Duration, end: Duration) => px(Math.max(1, at(end) - at(start) - 0.5));
  const people = momentOf(course, finish).people;
  const tasks = chapters.flatMap(({ number, start, finish: end }, index) => [
    node("rect", {
      class: classes("strip-task", `strip-task-${index % 2}`),
      x: at(start),
      y: 2,
      width: wide(start, end),
      height: TASKS - 6,
    }),
    ...(wide(start, end) > 16
      ? [
          node(
            "text",
            { class: "strip-number", x: at(start) + 3, y: TASKS - 8, "font-size": 13 },
            `${number}`,
          ),
        ]
      : []),
  ]);
  const rows = lanesInTime(course).flatMap((lane, row) => {
    const y = TASKS + row * ROW;
    const person = people[row];
    if (!person) return [];
    const waits = waitsOf(course).filter(({ crew }) => crew === person.crew);
    return [
      node("text", { class: "strip-call", x: 0, y: y + 14, "font-size": 13 }, person.call.slice(0, 8)),
      node("line", { class: "strip-row", x1: HEAD, x2: WIDTH - 4, y1: y + ROW - 2, y2: y + ROW - 2 }),
      ...waits.map(({ from, to }) =>
        node("line", {
          class: classes("strip-wait", `look-${person.look}`),
          x1: at(from),
          x2: at(to),
          y1: y + 9,
          y2: y + 9,
        }),
      ),
      ...lane.map(({ start, finish: end, stage }) =>
        node("rect", {
          class: classes(
            "strip-bar",
            stage === "skipped" ? "strip-skipped" : "strip-done",
            `look-${person.look}`,
          ),
          x: at(start),
          y: y + 3,
          width: wide(start, end),
          height: ROW - 8,
        }),
      ),
    ];
  });
  return {
    width: WIDTH,
    height: TASKS + people.length * ROW + 2,
    from: HEAD,
    to: WIDTH - 4,
    nodes: [...tasks, ...rows],
  };
}

/** The style of the strip, in the variables of the theme. */
export const STRIP_STYLE = String.raw`
.strip text { font-family: var(--face); fill: var(--ink); }
.strip .strip-task { fill: var(--wash); stroke: var(--edge); stroke-width: 1; }
.strip .strip-task-1 { fill: var(--sheet); }
.strip .strip-row { stroke: var(--rule); stroke-width: 1; }
.strip .strip-wait { stroke-width: 2; stroke-dasharray: 2 3; }
.strip .strip-bar { stroke-width: 1; }
.strip .strip-skipped { fill: none; stroke-width: 2; }
.strip .look-1 { stroke: var(--lane-1); } .strip .strip-done.look-1 { fill: var(--lane-1); stroke: var(--sheet); }
.strip .look-2 { stroke: var(--lane-2); } .strip .strip-done.look-2 { fill: var(--lane-2); stroke: var(--sheet); }
.strip .look-3 { stroke: var(--lane-3); } .strip .strip-done.look-3 { fill: var(--lane-3); stroke: var(--sheet); }
.strip .look-4 { stroke: var(--lane-4); } .strip .strip-done.look-4 { fill: var(--lane-4); stroke: var(--sheet); }
.strip .look-5 { stroke: var(--lane-5); } .strip .strip-done.look-5 { fill: var(--lane-5); stroke: var(--sheet); }
.strip .look-6 { stroke: var(--lane-6); } .strip .strip-done.look-6 { fill: var(--lane-6); stroke: var(--sheet); }
.strip .strip-now { stroke: var(--ink); stroke-width: 2; }
`;
