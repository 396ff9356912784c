import { scaleLinear } from "d3-scale";
import { useDeferredValue, useMemo, useRef } from "react";
import type { Light } from "../../core/light/index.ts";
import type { StartScan, StartTried } from "../../core/plan/index.ts";
import { startChances } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";
import type { UtcStyle } from "../../words/index.ts";
import { words } from "../../words/index.ts";
import { utcInForce } from "../language/index.ts";
import { useVisibleWidth } from "../measure/index.ts";
import "./light.css";
import { CURVE_SAMPLES, useChanceCurve } from "./use-chance-curve.ts";

interface StartScanChartProps {
  readonly outline: Outline;
  readonly scan: StartScan;
  readonly light: Light | null;
  readonly limit: Duration | null;
  readonly start: Instant;
  readonly onStart: (start: Instant) => void;
}

const HEIGHT = 150;
const LEFT = 52;
const RIGHT = 56;
const FOOT = 24;

/** Chances are worked out for every so many starts of the scan, which goes by the minute. */
const CURVE_EVERY = 15;
const HOUR = 3_600_000;

/** How many hours may lie between two that are named, and the least room for one in px, by the style of UTC. */
const EVERY = [3, 6, 12];
const CLOSEST_HOURS: Readonly<Record<UtcStyle, number>> = { plain: 44, day: 84 };

const clock = (instant: number) => words("figures/utc-minute", { at: instant as Instant });

/**
 * The finish for every start within a day and the chance by start, with darkness in the background. A start is chosen by a tap or with the
 * slider below.
 */
export function StartScanChart({ outline, scan, light, limit, start, onStart }: StartScanChartProps) {
  const box = useRef<HTMLDivElement>(null);
  const width = useVisibleWidth(box);
  const { tried, best } = scan;
  const first = tried[0]?.start ?? start;
  const last = tried.at(-1)?.start ?? start;
  const finishes = tried.flatMap(({ finish }) => finish ?? []);
  const hasFinish = finishes.length > 0;
  const bounds = [...finishes, ...(limit === null ? [] : [limit]), ...(hasFinish ? [] : [HOUR])];
  const [least, most] = [Math.min(...bounds), Math.max(...bounds)];
  const right = Math.max(LEFT + 100, width - RIGHT);
  const x = scaleLinear([first, last], [LEFT, right]);
  const every =
    EVERY.find((hours) => x(first + hours * HOUR) - x(first) >= CLOSEST_HOURS[utcInForce()]) ?? 24;
  const share = scaleLinear([0, 1], [HEIGHT - FOOT, 8]);
  const starts = useMemo(
    () => tried.flatMap(({ start: at }, place) => (place % CURVE_EVERY === 0 ? [at] : [])),
    [tried],
  );
  const curve = useChanceCurve(outline, light, starts);
  const y = scaleLinear([least - 5 * 60_000, most + 5 * 60_000], [HEIGHT - FOOT, 8]);
  const path = useMemo(() => {
    let line = "";
    let isDown = false;
    for (const { start: at, finish } of tried) {
      if (finish !== null) line += `${isDown ? "L" : "M"}${x(at).toFixed(1)} ${y(finish).toFixed(1)}`;
      isDown = finish !== null;
    }
    return line;
  }, [tried, x, y]);
  const chances = curve
    .map(
      ({ start: at, chance }, place) =>
        `${place === 0 ? "M" : "L"}${x(at).toFixed(1)} ${share(chance).toFixed(1)}`,
    )
    .join("");
  const index = Math.min(tried.length - 1, Math.max(0, Math.round((start - first) / 60_000)));
  const chosen = tried[index];
  const said = chosen ? startWords(chosen.start, chosen.finish, chosen.waits, chosen.margin) : "";
  const bestOne = best === null ? undefined : tried[best];
  return (
    <section className="start-scan" aria-labelledby="when-to-go-out">
      <h2 id="when-to-go-out">{words("light/when-to-go-out")}</h2>
      <div ref={box}>
        <svg
          width={width}
          height={HEIGHT}
          aria-hidden="true"
          onClick={(event) => {
            const at = x.invert(event.clientX - event.currentTarget.getBoundingClientRect().left);
            const near = tried[Math.round((at - first) / 60_000)];
            if (near) onStart(near.start);
          }}
        >
          {light?.spans?.darkness
            .filter(({ start: from }) => from < last)
            .map(({ start: from, end }) => (
              <rect
                key={from}
                className="start-scan-dark"
                x={x(Math.max(from, first))}
                width={Math.max(0, x(Math.min(end, last)) - x(Math.max(from, first)))}
                y={8}
                height={HEIGHT - FOOT - 8}
              />
            ))}
          {hoursBetween(first, last, every).map((hour) => (
            <text key={hour} className="start-scan-tick" x={x(hour)} y={HEIGHT - 6} textAnchor="middle">
              {clock(hour)}
            </text>
          ))}
          {y.ticks(3).map((tick) => (
            <text key={tick} className="start-scan-tick" x={LEFT - 8} y={y(tick) + 5} textAnchor="end">
              {hourMinuteText(tick as Duration)}
            </text>
          ))}
          {limit !== null && (
            <line className="start-scan-limit" x1={LEFT} x2={right} y1={y(limit)} y2={y(limit)} />
          )}
          {[0, 50, 100].map((percent) => (
            <text
              key={percent}
              className="start-scan-tick"
              x={width}
              y={share(percent / 100) + 5}
              textAnchor="end"
            >
              {words("light/percent", { percent })}
            </text>
          ))}
          <path className="start-scan-chance" d={chances} />
          <path className="start-scan-line" d={path} />
          <line className="start-scan-chosen" x1={x(start)} x2={x(start)} y1={4} y2={HEIGHT - FOOT} />
        </svg>
      </div>
      <input
        type="range"
        aria-label={words("light/minute-by-minute")}
        aria-valuetext={said}
        min={0}
        max={tried.length - 1}
        value={index}
        onChange={(event) => {
          const next = tried[Number(event.target.value)];
          if (next) onStart(next.start);
        }}
      />
      <p role="status">{said}</p>
      <StartMargins outline={outline} light={light} tried={chosen} />
      {bestOne && (
        <p>
          {words("light/shortest", {
            start: startWords(bestOne.start, bestOne.finish, bestOne.waits, bestOne.margin),
          })}{" "}
          <button type="button" className="plain-button" onClick={() => onStart(bestOne.start)}>
            {words("light/take-it")}
          </button>
        </p>
      )}
      {!hasFinish && <p>{words("light/scan-no-fit")}</p>}
      <p className="hint">
        {words("light/scan-how")}{" "}
        {words(limit === null ? "light/curve-how" : "light/curve-within-how", {
          samples: CURVE_SAMPLES,
          minutes: CURVE_EVERY,
        })}
      </p>
    </section>
  );
}

interface StartMarginsProps {
  readonly outline: Outline;
  readonly light: Light | null;
  readonly tried: StartTried | undefined;
}

/** How often durations are sampled for one start: enough for two percentage points, quick enough for a slider. */
const SAMPLES = 1000;

/** The chance that a start fits its windows, and how much later the tightest step of each could still start. */
function StartMargins({ outline, light, tried }: StartMarginsProps) {
  const start = useDeferredValue(tried?.start ?? null);
  const chanceOf = useMemo(() => startChances(outline), [outline]);
  const chance = useMemo(
    () => (start === null || !chanceOf ? null : chanceOf(light, start, SAMPLES)),
    [chanceOf, light, start],
  );
  if (!tried || !chance) return null;
  const { fits, withinLimit } = chance;
  const labelOf = (id: string) => outline.procedure.windows.find((one) => one.id === id)?.label ?? id;
  return (
    <>
      <p>
        {withinLimit === null
          ? words("light/chance", { fits })
          : words("light/chance-within", { fits, within: withinLimit })}
      </p>
      {tried.windows.length > 0 && (
        <ul className="plain-list">
          {tried.windows.map(({ window, step, margin }) => (
            <li key={window}>
              {words("light/window-margin", {
                window: labelOf(window),
                margin,
                step: outline.step(step)?.number ?? step,
              })}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function startWords(at: Instant, finish: Duration | null, waits: Duration, margin: Duration | null): string {
  if (finish === null) return words("light/fits-nothing", { at });
  if (margin === null) {
    return waits > 0
      ? words("light/start-waits", { at, finish, waits })
      : words("light/start-straight", { at, finish });
  }
  const isOver = margin < 0;
  return waits > 0
    ? words(isOver ? "light/start-waits-over" : "light/start-waits-margin", { at, finish, waits, margin })
    : words(isOver ? "light/start-straight-over" : "light/start-straight-margin", { at, finish, margin });
}

/** Every third hour between two instants. */
function hoursBetween(first: number, last: number, every: number): number[] {
  const step = every * HOUR;
  const hours: number[] = [];
  for (let hour = Math.ceil(first / step) * step; hour <= last; hour += step) hours.push(hour);
  return hours;
}
