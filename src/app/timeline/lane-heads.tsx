import { memo } from "react";
import { words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import type { ChartLayout } from "./chart-layout.ts";
import { laneTop } from "./chart-layout.ts";

interface LaneHeadsProps {
  readonly strands: readonly Strand[];
  readonly layout: ChartLayout;
  readonly narrow: boolean;
  readonly hasWindows: boolean;
}

/** The call signs, which stay at the left while time scrolls. Screen readers get the names from the bars. */
export const LaneHeads = memo(function LaneHeads({ strands, layout, narrow, hasWindows }: LaneHeadsProps) {
  return (
    <div className="timeline-heads" style={{ height: layout.height }} aria-hidden="true">
      <span className="timeline-head-row" style={{ top: 0, height: layout.axis }}>
        {words("timeline/pet")}
      </span>
      <span className="timeline-head-row" style={{ top: layout.tasksTop, height: 28 }}>
        {words("timeline/tasks")}
      </span>
      {hasWindows && (
        <span className="timeline-head-row" style={{ top: layout.windowsTop, height: 28 }}>
          {words("timeline/windows")}
        </span>
      )}
      {strands.map((strand) => (
        <span
          key={strand.lane}
          className="timeline-head"
          style={{ top: laneTop(layout, strand.lane), height: layout.lane.height, color: strand.colour }}
        >
          <span>{narrow ? strand.short : strand.call}</span>
          <svg width="100%" height="8" aria-hidden="true">
            <line
              x1="0"
              x2="100%"
              y1="4"
              y2="4"
              stroke="currentColor"
              strokeWidth="3.5"
              style={{ strokeDasharray: strand.dash }}
            />
          </svg>
        </span>
      ))}
    </div>
  );
});
