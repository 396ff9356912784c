import { memo } from "react";
import type { TimeWindow } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { hourMinuteText, later } from "../../core/units/index.ts";
import type { Span } from "../../core/window/index.ts";
import { words } from "../../words/index.ts";
import type { ChartLayout } from "./chart-layout.ts";
import { SPAN_ROW } from "./chart-layout.ts";
import { fittedText } from "./step-words.ts";
import type { TimeScale } from "./time-scale.ts";

/** A span of a window, with the row in which it is named. */
export interface WindowSpan extends Span {
  readonly window: TimeWindow;
  readonly row: number;
}

interface TimeGroundProps {
  readonly scale: TimeScale;
  readonly layout: ChartLayout;
  readonly windows: readonly WindowSpan[];
  /** The approximate x of the left edge of the visible part. Names move along with it. */
  readonly seenFrom: number;
  /** The instant of PET 0, for UTC beside the PET; `null` when it is not known. */
  readonly start: Instant | null;
}

const LETTER = 8;

/** The background of the lanes: day, night and contact, and the hours. */
export const TimeGround = memo(function TimeGround({
  scale,
  layout,
  windows,
  seenFrom,
  start,
}: TimeGroundProps) {
  const bottom = layout.footTop;
  return (
    <g>
      <rect
        className="timeline-sheet"
        x="0"
        y={layout.lanesTop}
        width={scale.width}
        height={bottom - layout.lanesTop}
      />
      {windows.map(({ window, from, to, row }) => {
        const left = scale.x(Math.max(0, from));
        const right = scale.x(Math.min(scale.end, to));
        if (right <= left) return null;
        const nameLeft = Math.max(left, seenFrom);
        const top = layout.windowsTop + row * SPAN_ROW;
        const name = fittedText(window.label ?? window.id, right - nameLeft - 12, LETTER);
        return (
          <g key={`${window.id} ${from}`} className={`timeline-window timeline-window-${window.kind}`}>
            <rect x={left} y={layout.lanesTop} width={right - left} height={bottom - layout.lanesTop} />
            <rect
              className="timeline-window-name"
              x={left}
              y={top + 2}
              width={right - left}
              height={SPAN_ROW - 4}
            />
            <path d={`M${left} ${top + 2}V${bottom}M${right} ${top + 2}V${bottom}`} />
            {name && (
              <text x={nameLeft + 6} y={top + SPAN_ROW / 2 + 5}>
                {name}
              </text>
            )}
          </g>
        );
      })}
      {scale.ticks.map((pet) => (
        <g key={pet} className="timeline-tick">
          <line x1={scale.x(pet)} x2={scale.x(pet)} y1={layout.axis - 6} y2={bottom} />
          <text x={scale.x(pet)} y={layout.axis - 12} textAnchor={pet === 0 ? "start" : "middle"}>
            {hourMinuteText(pet)}
            {start !== null && (
              <tspan className="timeline-utc" dx={5}>
                {words("timeline/utc-minute", { at: later(start, pet) })}
              </tspan>
            )}
          </text>
        </g>
      ))}
      <line className="timeline-axis" x1="0" x2={scale.width} y1={layout.axis} y2={layout.axis} />
    </g>
  );
});
