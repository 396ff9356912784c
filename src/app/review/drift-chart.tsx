import { ticks } from "d3-array";
import { scaleLinear } from "d3-scale";
import { useRef } from "react";
import type { Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { useVisibleWidth } from "../measure/index.ts";
import { behindWords } from "../parts/index.ts";
import type { DriftPoint } from "./drift-line.ts";
import { driftOf, driftSummary } from "./drift-line.ts";
import { trackTicks } from "./pet-track.tsx";

interface DriftChartProps {
  readonly review: Review;
  readonly end: Duration;
}

const MINUTE = 60_000;
const HEIGHT = 260;
const MARGIN = { top: 14, right: 52, bottom: 30, left: 44 };
const LEAST_SPREAD = 5;
const LABEL_GAP = 17;

/** How far each lane was behind or ahead of the plan over the walk, as stepped lines with the dash of the lane. */
export function DriftChart({ review, end }: DriftChartProps) {
  const box = useRef<HTMLDivElement>(null);
  const width = useVisibleWidth(box);
  const strands = strandsOf(review.outline.crew);
  const lanes = driftOf(review);
  const behind = lanes.flat().map((point) => point.behind / MINUTE);
  if (behind.length === 0) return null;
  const x = scaleLinear([0, end], [MARGIN.left, width - MARGIN.right]);
  const y = scaleLinear(
    [Math.max(LEAST_SPREAD, ...behind), Math.min(0, ...behind)],
    [MARGIN.top, HEIGHT - MARGIN.bottom],
  ).nice(5);
  const [high = 0, low = 0] = y.domain();
  const labels = spread(
    lanes.flatMap((points, lane) => {
      const last = points.at(-1);
      return last ? [{ lane, x: x(last.pet), y: y(last.behind / MINUTE) }] : [];
    }),
  );
  return (
    <section className="review-part" aria-labelledby="review-drift">
      <h2 id="review-drift">{words("review/drift")}</h2>
      <ul className="review-drift-words">
        {strands.map(({ lane, call, colour, dash }) => {
          const summary = driftSummary(lanes[lane] ?? []);
          return (
            <li key={lane}>
              <b style={{ color: colour }}>{call}</b>
              <svg width="40" height="6" aria-hidden="true" style={{ color: colour }}>
                <line x1="0" x2="40" y1="3" y2="3" style={{ strokeDasharray: dash }} />
              </svg>
              {summary
                ? words("review/drift-summary", {
                    most: behindWords(summary.most.behind),
                    at: summary.most.pet,
                    last: behindWords(summary.last.behind),
                  })
                : words("review/drift-none")}
            </li>
          );
        })}
      </ul>
      <div ref={box}>
        <svg className="review-drift" width={width} height={HEIGHT} aria-hidden="true">
          {ticks(low, high, 5).map((minutes) => (
            <g key={minutes}>
              <line
                className={minutes === 0 ? "review-drift-plan" : "review-drift-rule"}
                x1={MARGIN.left}
                x2={width - MARGIN.right}
                y1={y(minutes)}
                y2={y(minutes)}
              />
              <text x={MARGIN.left - 8} y={y(minutes) + 5} textAnchor="end">
                {minutes > 0 ? `+${minutes}` : minutes < 0 ? `−${-minutes}` : "0"}
              </text>
            </g>
          ))}
          {trackTicks(end).map((pet) => (
            <text key={pet} x={x(pet)} y={HEIGHT - 8} textAnchor="middle">
              {hourMinuteText(pet)}
            </text>
          ))}
          {strands.map(({ lane, colour, dash }) => (
            <path
              key={lane}
              className="review-drift-line"
              d={steppedPath(lanes[lane] ?? [], x, y)}
              style={{ stroke: colour, strokeDasharray: dash }}
            />
          ))}
          {labels.map((label) => (
            <text
              key={label.lane}
              className="review-drift-label"
              x={label.x + 6}
              y={label.y + 5}
              style={{ fill: strands[label.lane]?.colour }}
            >
              {strands[label.lane]?.short}
            </text>
          ))}
        </svg>
      </div>
      <p className="hint">{words("review/drift-how")} </p>
    </section>
  );
}

type Scale = (value: number) => number;

function steppedPath(points: readonly DriftPoint[], x: Scale, y: Scale): string {
  return points.reduce(
    (path, { pet, behind }) => `${path}H${x(pet).toFixed(1)}V${y(behind / MINUTE).toFixed(1)}`,
    `M${x(0).toFixed(1)} ${y(0).toFixed(1)}`,
  );
}

/** Moves labels at nearly the same place down so that none covers another. */
function spread<L extends { readonly x: number; readonly y: number }>(labels: readonly L[]): L[] {
  const placed: L[] = [];
  for (const label of labels.toSorted((a, b) => a.y - b.y)) {
    const above = placed.filter((other) => Math.abs(other.x - label.x) < 40).at(-1);
    placed.push(above ? { ...label, y: Math.max(label.y, above.y + LABEL_GAP) } : label);
  }
  return placed;
}
