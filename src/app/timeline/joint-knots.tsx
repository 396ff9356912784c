import { memo } from "react";
import type { ChartLayout } from "./chart-layout.ts";
import { laneTop } from "./chart-layout.ts";
import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";
import type { TimeScale } from "./time-scale.ts";

interface JointKnotsProps {
  readonly bars: readonly LaneBar[];
  readonly scale: TimeScale;
  readonly layout: ChartLayout;
}

/** The lines that connect the bars of a joint step, drawn behind the bars. */
export function JointKnots({ bars, scale, layout }: JointKnotsProps) {
  return (
    <g>
      {bars
        .filter(({ entry, lane }) => entry.performers.length > 1 && lane === Math.min(...entry.performers))
        .map((bar) => (
          <JointKnot
            key={bar.entry.index}
            from={scale.x(shownStart(bar))}
            to={scale.x(shownFinish(bar))}
            lanes={bar.entry.performers.toSorted((a, b) => a - b).join(" ")}
            layout={layout}
            onPaper={bar.flown === null}
          />
        ))}
    </g>
  );
}

interface JointKnotProps {
  readonly from: number;
  readonly to: number;
  /** The connected lanes as text, so that equal lanes are equal values. */
  readonly lanes: string;
  readonly layout: ChartLayout;
  readonly onPaper: boolean;
}

const JointKnot = memo(function JointKnot({ from, to, lanes, layout, onPaper }: JointKnotProps) {
  const x = (from + to) / 2;
  const { plannedTop, plannedHeight, barTop, barHeight } = layout.lane;
  const top = onPaper ? plannedTop : barTop;
  const height = onPaper ? plannedHeight : barHeight;
  const tops = lanes.split(" ").map((lane) => laneTop(layout, Number(lane)) + top);
  const first = Math.min(...tops);
  const last = Math.max(...tops);
  return (
    <g className="timeline-knot">
      <line x1={x} x2={x} y1={first + height / 2} y2={last + height / 2} />
      {tops.map((at) => (
        <circle key={at} cx={x} cy={at === last ? at - 3 : at + height + 3} r="3" />
      ))}
    </g>
  );
});
