import { memo } from "react";
import { fittedText } from "./step-words.ts";

interface WaitMarkProps {
  readonly colour: string;
  /** The SVG dash array of the lane. */
  readonly dash: string;
  readonly pattern: string;
  readonly top: number;
  readonly height: number;
  readonly from: number;
  readonly to: number;
  /** The visible part of the wait, where its words are placed. */
  readonly seenFrom: number;
  readonly seenTo: number;
  readonly reason: string;
}

const LETTER = 8;

/** Idle time, drawn as a loose, hatched strand. The reason is shown where there is room. */
export const WaitMark = memo(function WaitMark({
  colour,
  dash,
  pattern,
  top,
  height,
  from,
  to,
  seenFrom,
  seenTo,
  reason,
}: WaitMarkProps) {
  const width = to - from;
  if (width < 1) return null;
  const words = fittedText(reason, seenTo - seenFrom - 12, LETTER);
  return (
    <g style={{ color: colour }}>
      <rect
        className="timeline-wait"
        style={{ strokeDasharray: dash }}
        x={from}
        y={top}
        width={width}
        height={height}
        fill={`url(#${pattern})`}
      />
      {words && (
        <text
          className="timeline-wait-words"
          x={(seenFrom + seenTo) / 2}
          y={top + height / 2 + 5}
          textAnchor="middle"
        >
          {words}
        </text>
      )}
    </g>
  );
});
