import { useRef } from "react";
import type { CourseStep } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import type { ComparedWalk } from "../../core/walks-compared/index.ts";
import { strandsOf } from "../braid/index.ts";

interface WalkStripProps {
  readonly outline: Outline;
  readonly walk: ComparedWalk;
  /** The PET at the right edge, the same for all walks. */
  readonly end: Duration;
  /** Opens the review of the walk at a step. */
  readonly onStep: (step: StepId) => void;
}

const WIDTH = 1000;
const LANE = 18;
const BAR = 8;

/**
 * One walk on the time axis that all share: a line for each crew member, thick where a step was done, and a mark at each
 * deviation of a step. Screen readers skip it, since the words beside it and the review say the same.
 */
export function WalkStrip({ outline, walk, end, onStep }: WalkStripProps) {
  const picture = useRef<SVGSVGElement>(null);
  const strands = strandsOf(outline.crew);
  const x = (pet: number) => (pet / end) * WIDTH;
  const height = strands.length * LANE;
  const performersOf = (step: StepId) => outline.step(step)?.performers ?? [];
  const byStep = new Map(walk.steps.map((one) => [one.step, one]));
  const open = (clientX: number, clientY: number) => {
    const box = picture.current?.getBoundingClientRect();
    if (!box || box.width === 0) return;
    const pet = ((clientX - box.left) / box.width) * end;
    const lane = Math.floor(((clientY - box.top) / box.height) * strands.length);
    const nearest = nearestStep(
      walk.steps.filter(({ step }) => performersOf(step).includes(lane)),
      pet,
    );
    if (nearest) onStep(nearest.step);
  };
  return (
    <div className="walk-strip-box">
      <ul className="walk-strip-names" aria-hidden="true">
        {strands.map(({ lane, short, colour }) => (
          <li key={lane} style={{ color: colour }}>
            {short}
          </li>
        ))}
      </ul>
      {/* Each walk and step is reached by the buttons beside the picture too. */}
      <svg
        ref={picture}
        className="walk-strip"
        viewBox={`0 0 ${WIDTH} ${height}`}
        preserveAspectRatio="none"
        height={height}
        aria-hidden="true"
        onClick={({ clientX, clientY }) => open(clientX, clientY)}
      >
        {strands.map(({ lane, colour }) => {
          const own = walk.steps.filter(
            ({ step, stage }) => stage !== "skipped" && performersOf(step).includes(lane),
          );
          const last = own.reduce((most, { finish }) => Math.max(most, finish), 0);
          const middle = lane * LANE + LANE / 2;
          return (
            <g key={lane} style={{ stroke: colour }}>
              <path className="walk-strip-line" d={`M0 ${middle}H${x(last)}`} />
              <path
                className="walk-strip-work"
                style={{ strokeWidth: BAR }}
                d={own
                  .map(({ start, finish }) => `M${x(start)} ${middle}H${barEnd(x(start), x(finish))}`)
                  .join("")}
              />
            </g>
          );
        })}
        {walk.deviations.map(({ step, kind }, index) => {
          const one = step === null ? undefined : byStep.get(step);
          const lane = step === null ? undefined : performersOf(step)[0];
          if (!one || lane === undefined) return null;
          const middle = lane * LANE + LANE / 2;
          return (
            <path
              // A step may deviate twice in one way.
              // biome-ignore lint/suspicious/noArrayIndexKey: the list of a walk does not change its order.
              key={`${step} ${kind} ${index}`}
              className="walk-strip-deviation"
              d={`M${x(one.finish)} ${middle - 7}l4 7l-4 7l-4 -7Z`}
            />
          );
        })}
      </svg>
    </div>
  );
}

/** A gap of a hair between steps that follow at once, so that they are told apart. */
const barEnd = (from: number, to: number) => Math.max(from + 0.8, to - 1.2);

function nearestStep(steps: readonly CourseStep[], pet: number): CourseStep | null {
  const distance = ({ start, finish }: CourseStep) =>
    pet < start ? start - pet : pet > finish ? pet - finish : 0;
  return steps.reduce<CourseStep | null>(
    (best, one) => (best && distance(best) <= distance(one) ? best : one),
    null,
  );
}
