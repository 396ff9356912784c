import type { Wait } from "../../core/course/index.ts";
import type { Span } from "../../core/window/index.ts";
import type { ChartFrame } from "./chart-frame.ts";
import { laneTop } from "./chart-layout.ts";
import { JointKnots } from "./joint-knots.tsx";
import type { LaneBar } from "./lane-bar.ts";
import type { TaskSpan } from "./task-heads.tsx";
import { TaskHeads } from "./task-heads.tsx";
import type { PlacedFlag } from "./time-flag.tsx";
import { TimeFlag } from "./time-flag.tsx";
import type { WindowSpan } from "./time-ground.tsx";
import { TimeGround } from "./time-ground.tsx";
import { WaitMarks } from "./wait-marks.tsx";

interface ChartDrawingProps {
  readonly frame: ChartFrame;
  readonly bars: readonly LaneBar[];
  readonly tasks: readonly TaskSpan[];
  readonly waits: readonly Wait[];
  readonly windows: readonly WindowSpan[];
  readonly flags: readonly PlacedFlag[];
  /** The PETs between which the finish probably falls; `null` when unknown. */
  readonly band: Span | null;
}

/** Everything in the chart that is only looked at, drawn behind the bars and hidden from screen readers. */
export function ChartDrawing({ frame, bars, tasks, waits, windows, flags, band }: ChartDrawingProps) {
  const { strands, scale, layout, seenFrom, now, start } = frame;
  return (
    <svg aria-hidden="true" overflow="visible">
      <TimeGround scale={scale} layout={layout} windows={windows} seenFrom={seenFrom} start={start} />
      {band && (
        <rect
          className="timeline-band"
          x={scale.x(band.from)}
          y={layout.lanesTop}
          width={scale.x(band.to) - scale.x(band.from)}
          height={layout.footTop - layout.lanesTop}
        />
      )}
      <TaskHeads spans={tasks} scale={scale} layout={layout} seenFrom={seenFrom} />
      {strands.map(({ lane }) => (
        <line
          key={lane}
          className="timeline-lane-edge"
          x1="0"
          x2={scale.width}
          y1={laneTop(layout, lane)}
          y2={laneTop(layout, lane)}
        />
      ))}
      <WaitMarks frame={frame} waits={waits} />
      <JointKnots bars={bars} scale={scale} layout={layout} />
      {flags.map(({ kind, x, row, words: named, toLeft }) => (
        <TimeFlag key={kind} kind={kind} layout={layout} x={x} row={row} words={named} toLeft={toLeft} />
      ))}
      {now !== null && (
        <line
          className="timeline-now"
          x1={scale.x(now)}
          x2={scale.x(now)}
          y1={layout.axis}
          y2={layout.footTop}
        />
      )}
    </svg>
  );
}
