import { useId, useMemo } from "react";
import { waitsOf } from "../../core/course/index.ts";
import type { Plan, Timeline } from "../../core/plan/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { utcInForce } from "../language/index.ts";
import { ChartDrawing } from "./chart-drawing.tsx";
import { endOf, flagsOfPlan } from "./chart-ends.ts";
import { chartLayoutOf, laneTop } from "./chart-layout.ts";
import { laneBarsOf } from "./lane-bar.ts";
import { LaneBars } from "./lane-bars.tsx";
import { LaneHatches } from "./lane-hatches.tsx";
import { rowsOf } from "./stack-spans.ts";
import { taskSpansOf } from "./task-heads.tsx";
import { placeFlags } from "./time-flag.tsx";
import { timeScaleOf } from "./time-scale.ts";
import { windowSpansOf } from "./window-spans.ts";
import "./timeline.css";

interface DrawnStripsProps {
  readonly plan: Plan;
  readonly timeline: Timeline;
  /** Height over width of the paper that the strips are to fill. */
  readonly shape: number;
}

/** The widest that a strip is drawn, in px: on a sheet 400 mm wide its words are still 2 mm high. */
const WIDEST = 2600;
const HEADS = 110;
const QUARTER = 15 * 60_000;

/**
 * The timeline of a plan as strips one below the other, each the next part of the time, all of one length in whole quarters of an
 * hour. There are as many as make the words as large as can be on a sheet of the given shape.
 */
export function DrawnStrips({ plan, timeline, shape }: DrawnStripsProps) {
  const { outline, start } = plan;
  const hatch = useId();
  const drawn = useMemo(() => {
    const lanes = laneBarsOf(outline, timeline, null);
    const windows = windowSpansOf(outline.procedure.windows, plan.windows);
    const tasks = taskSpansOf(outline.procedure.tasks, lanes.flat());
    const flags = flagsOfPlan(plan);
    const end = endOf(flags, null, null);
    const layout = chartLayoutOf({
      live: false,
      lanes: outline.crew.length,
      taskRows: rowsOf(tasks),
      windowRows: rowsOf(windows),
      footRows: flags.length,
    });
    const count = Math.max(1, Math.floor((WIDEST * shape) / layout.height));
    const length = (Math.ceil(end / count / QUARTER) * QUARTER) as Duration;
    const scale = timeScaleOf(end, WIDEST - HEADS, length, start === null ? null : utcInForce());
    const strips = Array.from({ length: Math.ceil(end / length) }, (_, index) => index * length);
    return { lanes, windows, tasks, flags: placeFlags(flags, scale), layout, length, scale, strips };
  }, [outline, plan, timeline, start, shape]);
  const { lanes, windows, tasks, flags, layout, length, scale, strips } = drawn;
  const strands = useMemo(() => strandsOf(outline.crew), [outline]);
  const waits = useMemo(() => waitsOf(timeline.course), [timeline]);
  return strips.map((from) => {
    const left = scale.x(from) - (from === 0 ? 10 : 0);
    const right = Math.min(scale.width, scale.x(from + length));
    const frame = {
      outline,
      strands,
      scale,
      layout,
      seenFrom: left,
      visible: right - left,
      now: null,
      start,
      hatch: `${hatch}${from}`,
    };
    return (
      <svg
        key={from}
        className="timeline-strip"
        viewBox={`0 0 ${WIDEST} ${layout.height}`}
        role="img"
        aria-label={words("timeline/strip", { from: from as Duration, to: (from + length) as Duration })}
      >
        {strands.map(({ lane, call, colour, dash }) => (
          <g key={lane} transform={`translate(0 ${laneTop(layout, lane) + layout.lane.height / 2})`}>
            <text className="timeline-strip-head" y="-4">
              {call}
            </text>
            <line
              x2={HEADS - 14}
              y1="8"
              y2="8"
              stroke={colour}
              strokeWidth="3.5"
              style={{ strokeDasharray: dash }}
            />
          </g>
        ))}
        <svg
          aria-hidden="true"
          x={HEADS}
          width={right - left}
          height={layout.height}
          viewBox={`${left} 0 ${right - left} ${layout.height}`}
        >
          <LaneHatches strands={strands} hatch={frame.hatch} />
          <ChartDrawing
            frame={frame}
            bars={lanes.flat()}
            tasks={tasks}
            waits={waits}
            windows={windows}
            flags={flags}
            band={null}
          />
          <LaneBars frame={frame} lanes={lanes} chosen={null} reachable={null} />
        </svg>
      </svg>
    );
  });
}
