import type { Weighed } from "../../core/learn/index.ts";
import { beyondScale, onRatioScale, RATIO_MARKS } from "./ratio-scale.ts";

/** A band from one time to another, in minutes. */
export interface StripBand {
  readonly from: number;
  readonly middle: number;
  readonly to: number;
}

interface StepStripProps {
  /** The planner's likely time, in minutes, which is the middle of the scale. */
  readonly likely: number;
  /** Drawn hollow, above. */
  readonly planned: StripBand | null;
  /** Drawn filled, below it. */
  readonly found: StripBand | null;
  readonly observations: readonly Weighed[];
}

const WIDTH = 400;
const HEIGHT = 58;
const EDGE = 14;
const PLANNED = 8;
const FOUND = 22;
const MARKS = 45;

const at = (minutes: number, likely: number) =>
  EDGE + (WIDTH - 2 * EDGE) * onRatioScale(Math.max(minutes, 1e-6) / likely);

/**
 * How long a step took in each walk, over what is expected, on a scale of factors of its likely time: the same for every step.
 * Screen readers skip it, since the words beside it say the same.
 */
export function StepStrip({ likely, planned, found, observations }: StepStripProps) {
  return (
    <svg
      className="step-strip"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      width={WIDTH}
      height={HEIGHT}
      aria-hidden="true"
    >
      {RATIO_MARKS.map((factor) => (
        <line
          key={factor}
          className={factor === 1 ? "step-strip-likely" : "step-strip-rule"}
          x1={at(factor * likely, likely)}
          x2={at(factor * likely, likely)}
          y1={0}
          y2={HEIGHT}
        />
      ))}
      {planned && <Band className="step-strip-planned" band={planned} likely={likely} y={PLANNED} />}
      {found && <Band className="step-strip-found" band={found} likely={likely} y={FOUND} />}
      {observations.map((one) => (
        <Mark
          key={one.walk}
          one={one}
          x={at(one.minutes, likely)}
          beyond={beyondScale(one.minutes / likely)}
        />
      ))}
    </svg>
  );
}

interface BandProps {
  readonly className: string;
  readonly band: StripBand;
  readonly likely: number;
  readonly y: number;
}

function Band({ className, band, likely, y }: BandProps) {
  const [from, middle, to] = [at(band.from, likely), at(band.middle, likely), at(band.to, likely)];
  return (
    <g className={className}>
      <rect x={from} y={y - 5} width={Math.max(2, to - from)} height={10} rx={2} />
      <line x1={middle} x2={middle} y1={y - 7} y2={y + 7} />
    </g>
  );
}

interface MarkProps {
  readonly one: Weighed;
  readonly x: number;
  /** −1 or 1 for a time that lies beyond an end of the scale, where it is drawn with a hook that points on; 0 otherwise. */
  readonly beyond: -1 | 0 | 1;
}

/** A filled dot for a live walk, a hollow one for a rehearsal, an arrow for what was broken off, a ring round what is far off. */
function Mark({ one, x, beyond }: MarkProps) {
  return (
    <g className="step-strip-mark" data-mode={one.mode}>
      {one.isBrokenOff ? (
        <path d={`M${x - 5} ${MARKS - 5}L${x + 6} ${MARKS}L${x - 5} ${MARKS + 5}Z`} />
      ) : (
        <circle cx={x} cy={MARKS} r={4.5} />
      )}
      {beyond !== 0 && (
        <path
          className="step-strip-beyond"
          d={`M${x + beyond * 7} ${MARKS - 4}l${beyond * 5} 4l${-beyond * 5} 4`}
        />
      )}
      {one.isOutlier && <circle className="step-strip-ring" cx={x} cy={MARKS} r={9} />}
    </g>
  );
}
