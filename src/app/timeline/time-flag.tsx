import { memo } from "react";
import type { Duration } from "../../core/units/index.ts";
import type { ChartLayout } from "./chart-layout.ts";
import { footLine } from "./chart-layout.ts";
import { stackSpans } from "./stack-spans.ts";
import type { TimeScale } from "./time-scale.ts";

/** A named PET that is marked across the lanes: the limit, the planned finish, or the forecast finish. */
export interface ChartFlag {
  readonly kind: "limit" | "finish" | "forecast";
  readonly pet: Duration;
  readonly words: string;
}

/** A flag with its position: the side of its line on which its words are, and the row of the foot. */
export interface PlacedFlag extends ChartFlag {
  readonly x: number;
  readonly row: number;
  readonly toLeft: boolean;
}

const LETTER = 8;

/** Positions flags so that no words overlap. */
export function placeFlags(flags: readonly ChartFlag[], scale: TimeScale): PlacedFlag[] {
  return stackSpans(
    flags.map((flag) => {
      const x = scale.x(flag.pet);
      const room = flag.words.length * LETTER + 16;
      const toLeft = x > room;
      return { ...flag, x, toLeft, from: toLeft ? x - room : x, to: toLeft ? x : x + room };
    }),
  );
}

interface TimeFlagProps {
  readonly layout: ChartLayout;
  readonly kind: ChartFlag["kind"];
  readonly words: string;
  readonly x: number;
  readonly row: number;
  readonly toLeft: boolean;
}

/** A flag: a line across the lanes with its words below them. */
export const TimeFlag = memo(function TimeFlag({ layout, kind, words, x, row, toLeft }: TimeFlagProps) {
  const line = footLine(layout, row);
  return (
    <g className={`timeline-flag timeline-flag-${kind}`}>
      <line x1={x} x2={x} y1={layout.lanesTop} y2={line + 4} />
      <text x={toLeft ? x - 7 : x + 7} y={line} textAnchor={toLeft ? "end" : "start"}>
        {words}
      </text>
    </g>
  );
});
