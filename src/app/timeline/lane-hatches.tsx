import type { ChartFrame } from "./chart-frame.ts";

/** The hatch of each lane, in its colour, which fills the waits of the lane. */
export function LaneHatches({ strands, hatch }: Pick<ChartFrame, "strands" | "hatch">) {
  return (
    <defs>
      {strands.map(({ lane, colour }) => (
        <pattern
          key={lane}
          id={`${hatch}${lane}`}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" x2="0" y1="0" y2="7" strokeWidth="1.5" style={{ stroke: colour }} />
        </pattern>
      ))}
    </defs>
  );
}
