import type { KeyboardEvent, MouseEvent } from "react";
import { useId, useMemo, useRef } from "react";
import type { Wait } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import type { Span } from "../../core/window/index.ts";
import { words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { useVisibleWidth } from "../measure/index.ts";
import { barBeside, nearestBar } from "./bar-walk.ts";
import { chartLayoutOf, laneTop } from "./chart-layout.ts";
import { JointKnots } from "./joint-knots.tsx";
import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";
import { LaneHeads } from "./lane-heads.tsx";
import { StepBar } from "./step-bar.tsx";
import { performersOf, waitReason } from "./step-words.ts";
import { TaskHeads, taskSpansOf } from "./task-heads.tsx";
import type { ChartFlag } from "./time-flag.tsx";
import { placeFlags, TimeFlag } from "./time-flag.tsx";
import type { WindowSpan } from "./time-ground.tsx";
import { TimeGround } from "./time-ground.tsx";
import type { TimeScale, Zoom } from "./time-scale.ts";
import { timeScaleOf } from "./time-scale.ts";
import { useTimeScroll } from "./use-time-scroll.ts";
import { WaitMark } from "./wait-mark.tsx";

interface TimeChartProps {
  readonly outline: Outline;
  readonly lanes: readonly (readonly LaneBar[])[];
  readonly waits: readonly Wait[];
  readonly windows: readonly WindowSpan[];
  readonly flags: readonly ChartFlag[];
  /** The present PET; `null` on paper and before the clock is started. */
  readonly now: Duration | null;
  /** The PET at the right edge. */
  readonly end: Duration;
  readonly zoom: Zoom;
  /** The PETs between which the finish probably falls; `null` when unknown. */
  readonly band: Span | null;
  readonly chosen: LaneBar | null;
  readonly onChoose: (bar: LaneBar) => void;
}

const NARROW_BELOW = 640;
/** A tap this near to a bar counts as a tap on it, in px, because many bars are too short to hit. */
const REACH = 28;

/** The lanes over time. The Tab key reaches one bar; arrow keys move from there to the others. */
export function TimeChart(props: TimeChartProps) {
  const { outline, lanes, waits, windows, flags, now, end, zoom, band, chosen, onChoose } = props;
  const scroller = useRef<HTMLDivElement>(null);
  const visible = useVisibleWidth(scroller);
  const hatch = useId();
  const strands = useMemo(() => strandsOf(outline.crew), [outline]);
  const scale = useMemo(() => timeScaleOf(end, visible, zoom), [end, visible, zoom]);
  const { following, seenFrom, backToNow, onScroll, reveal } = useTimeScroll(scroller, scale, now);
  const bars = lanes.flat();
  const live = bars.some(({ flown }) => flown !== null);
  const tasks = taskSpansOf(outline.procedure.tasks, bars);
  const taskRows = rowsOf(tasks);
  const windowRows = rowsOf(windows);
  const placedFlags = placeFlags(flags, scale);
  const flagRows = rowsOf(placedFlags);
  const layout = useMemo(
    () => chartLayoutOf({ live, lanes: outline.crew.length, taskRows, windowRows, footRows: flagRows }),
    [live, outline, taskRows, windowRows, flagRows],
  );
  const reachable = chosen ?? bars[0] ?? null;

  const choose = (bar: LaneBar) => {
    onChoose(bar);
    reveal(scale.x(shownStart(bar)), scale.x(shownFinish(bar)));
    const shown = scroller.current?.querySelector<SVGGElement>(`[data-bar="${bar.key}"]`);
    shown?.focus({ preventScroll: true });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (!reachable || event.altKey || event.ctrlKey || event.metaKey) return;
    const next =
      event.key === "Enter" || event.key === " " ? reachable : barBeside(lanes, reachable, event.key);
    if (!next) return;
    event.preventDefault();
    choose(next);
  };
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const pet = scale.pet(event.clientX - box.left);
    const lane = Math.floor((event.clientY - box.top - layout.lanesTop) / layout.lane.height);
    const bar = nearestBar(lanes[lane] ?? [], pet);
    if (!bar) return;
    const [from, to] = [scale.x(shownStart(bar)), scale.x(shownFinish(bar))];
    const x = scale.x(pet);
    if (x >= from - REACH && x <= to + REACH) choose(bar);
  };

  return (
    <div className="timeline-chart">
      <LaneHeads
        strands={strands}
        layout={layout}
        narrow={visible < NARROW_BELOW}
        hasWindows={windowRows > 0}
      />
      <div className="timeline-scroll" ref={scroller} onScroll={onScroll}>
        {/* biome-ignore lint/a11y/useSemanticElements: there is no fieldset that draws. */}
        <svg
          role="group"
          aria-label={words("timeline/chart")}
          width={scale.width}
          height={layout.height}
          viewBox={`0 0 ${scale.width} ${layout.height}`}
          onClick={onClick}
          onKeyDown={onKeyDown}
        >
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
          <svg aria-hidden="true" overflow="visible">
            <TimeGround scale={scale} layout={layout} windows={windows} seenFrom={seenFrom} />
            {band && (
              <rect
                className="timeline-band"
                x={scale.x(band.from)}
                y={layout.lanesTop}
                width={scale.x(band.to) - scale.x(band.from)}
                height={layout.footTop - layout.lanesTop}
              />
            )}
            <TaskHeads spans={tasks} scale={scale} layout={layout} seenFrom={seenFrom} />
            {strands.map(({ lane }) => (
              <line
                key={lane}
                className="timeline-lane-edge"
                x1="0"
                x2={scale.width}
                y1={laneTop(layout, lane)}
                y2={laneTop(layout, lane)}
              />
            ))}
            {waits.map((wait) => {
              const [from, to] = [scale.x(wait.from), scale.x(wait.to)];
              const lane = outline.lane(wait.crew);
              return (
                <WaitMark
                  key={`${wait.crew} ${wait.step} ${wait.from}`}
                  colour={strands[lane]?.colour ?? "currentColor"}
                  dash={strands[lane]?.dash ?? "none"}
                  pattern={`${hatch}${lane}`}
                  top={laneTop(layout, lane) + layout.lane.barTop + 9}
                  height={layout.lane.barHeight - 18}
                  from={from}
                  to={to}
                  seenFrom={Math.min(Math.max(from, seenFrom), to)}
                  seenTo={Math.max(Math.min(to, seenFrom + visible), from)}
                  reason={waitReason(outline, wait.on)}
                />
              );
            })}
            <JointKnots bars={bars} scale={scale} layout={layout} />
            {placedFlags.map(({ kind, x, row, words: named, toLeft }) => (
              <TimeFlag
                key={kind}
                kind={kind}
                layout={layout}
                x={x}
                row={row}
                words={named}
                toLeft={toLeft}
              />
            ))}
            {now !== null && (
              <line
                className="timeline-now"
                x1={scale.x(now)}
                x2={scale.x(now)}
                y1={layout.axis}
                y2={layout.footTop}
              />
            )}
          </svg>
          {lanes.map((laneBars, lane) => {
            const strand = strands[lane];
            if (!strand) return null;
            return laneBars.map((bar) => {
              const { planned, slack, flown, entry, key } = bar;
              const inWork = flown?.stage === "in-work";
              return (
                <StepBar
                  key={key}
                  barKey={key}
                  strand={strand}
                  top={laneTop(layout, lane)}
                  layout={layout.lane}
                  label={barLabel(outline, bar)}
                  number={entry.number}
                  action={entry.step.do}
                  joint={entry.performers.length > 1}
                  onCriticalPath={bar.onCriticalPath}
                  selected={chosen?.key === key}
                  reachable={reachable?.key === key}
                  plannedFrom={planned ? scale.x(planned.start) : null}
                  plannedTo={planned ? scale.x(planned.finish) : 0}
                  latest={slack ? scale.x(slack.latestFinish) : 0}
                  flownFrom={flown ? scale.x(flown.start) : null}
                  flownTo={flown ? scale.x(flown.finish) : 0}
                  stage={flown?.stage ?? null}
                  seenFrom={straddles(seenFrom, bar, scale) ? seenFrom : 0}
                  now={inWork && now !== null ? scale.x(now) : 0}
                />
              );
            });
          })}
          {now !== null && <NowLabel x={scale.x(now)} end={scale.width} clock={clockText(now)} />}
        </svg>
      </div>
      {now !== null && !following && zoom !== "whole" && (
        <button type="button" className="plain-button timeline-back" onClick={backToNow}>
          {words("timeline/back-to-now")}
        </button>
      )}
    </div>
  );
}

/** True when the left edge of the visible part lies within a bar. */
const straddles = (x: number, bar: LaneBar, scale: TimeScale) =>
  scale.x(shownStart(bar)) < x && x < scale.x(shownFinish(bar));

const rowsOf = (spans: readonly { readonly row: number }[]) =>
  spans.reduce((most, { row }) => Math.max(most, row + 1), 0);

function NowLabel({ x, end, clock }: { readonly x: number; readonly end: number; readonly clock: string }) {
  const width = clock.length * 9.5 + 14;
  const left = Math.min(Math.max(0, x - width / 2), end - width);
  return (
    <svg className="timeline-now-label" aria-hidden="true" overflow="visible">
      <rect x={left} y="3" width={width} height="26" rx="4" />
      <text x={left + width / 2} y="22" textAnchor="middle">
        {clock}
      </text>
    </svg>
  );
}

/** What a screen reader says about a bar: the step, its planned times, and how it went. */
function barLabel(outline: Outline, { entry, planned, flown }: LaneBar): string {
  return [
    words("timeline/bar", {
      number: entry.number,
      crew: performersOf(outline, entry),
      step: entry.step.do,
    }),
    planned
      ? words("timeline/bar-planned", { start: planned.start, finish: planned.finish })
      : words("timeline/bar-not-planned"),
    ...(flown ? [flownWords(flown)] : []),
  ].join(", ");
}

function flownWords({ stage, start, finish }: NonNullable<LaneBar["flown"]>): string {
  switch (stage) {
    case "done":
      return words("timeline/bar-done", { start, finish });
    case "in-work":
      return words("timeline/bar-in-work", { start });
    case "skipped":
      return words("timeline/bar-skipped", { finish });
    case "planned":
      return words("timeline/bar-to-come");
  }
}
