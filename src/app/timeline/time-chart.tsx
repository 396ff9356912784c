import { useEffect, useId, useMemo, useRef } from "react";
import type { Wait } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant, StepId } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import type { Span } from "../../core/window/index.ts";
import { words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { utcInForce } from "../language/index.ts";
import { useVisibleWidth } from "../measure/index.ts";
import { ChartDrawing } from "./chart-drawing.tsx";
import { chartLayoutOf } from "./chart-layout.ts";
import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";
import { LaneBars } from "./lane-bars.tsx";
import { LaneHatches } from "./lane-hatches.tsx";
import { LaneHeads } from "./lane-heads.tsx";
import { NowLabel } from "./now-label.tsx";
import { rowsOf } from "./stack-spans.ts";
import { taskSpansOf } from "./task-heads.tsx";
import type { ChartFlag } from "./time-flag.tsx";
import { placeFlags } from "./time-flag.tsx";
import type { WindowSpan } from "./time-ground.tsx";
import type { Zoom } from "./time-scale.ts";
import { timeScaleOf } from "./time-scale.ts";
import { useBarChoice } from "./use-bar-choice.ts";
import { useTimeScroll } from "./use-time-scroll.ts";

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
  /** The instant of PET 0; `null` when it is not known. */
  readonly start: Instant | null;
  readonly zoom: Zoom;
  /** The PETs between which the finish probably falls; `null` when unknown. */
  readonly band: Span | null;
  readonly chosen: LaneBar | null;
  /** Whether a bar that was chosen elsewhere is brought into sight. */
  readonly showsChosen?: boolean;
  /** The steps that get a mark of their own, with what it means in words; none unless given. */
  readonly marked?: ReadonlyMap<StepId, string>;
  readonly onChoose: (bar: LaneBar) => void;
  /** Called with a bar that is tapped or taken by Enter, where that does more than choosing it. */
  readonly onPick?: (bar: LaneBar) => void;
  /** Called with the PET that the reader touches. */
  readonly onTouch: (pet: Duration) => void;
}

const NARROW_BELOW = 640;

const nothingMore = () => {};

/** The lanes over time. The Tab key reaches one bar; arrow keys move from there to the others. */
export function TimeChart(props: TimeChartProps) {
  const { outline, lanes, waits, windows, flags, now, end, start, zoom, band, chosen, onChoose, onTouch } =
    props;

  const scroller = useRef<HTMLDivElement>(null);
  const visible = useVisibleWidth(scroller);
  const hatch = useId();
  const strands = useMemo(() => strandsOf(outline.crew), [outline]);
  const utc = start === null ? null : utcInForce();
  const scale = useMemo(() => timeScaleOf(end, visible, zoom, utc), [end, visible, zoom, utc]);
  const { following, seenFrom, backToNow, onScroll, reveal } = useTimeScroll(scroller, scale, now);
  // What is seen changes when another bar is chosen, not when one is drawn elsewhere.
  const shown = useRef<string | null>(null);
  useEffect(() => {
    if (!props.showsChosen || !chosen || shown.current === chosen.key) return;
    shown.current = chosen.key;
    reveal(scale.x(shownStart(chosen)), scale.x(shownFinish(chosen)));
  });
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

  const { onKeyDown, onClick } = useBarChoice({
    scroller,
    lanes,
    scale,
    layout,
    reachable,
    onChoose,
    onPick: props.onPick ?? nothingMore,
    onTouch,
    reveal,
  });
  const frame = { outline, strands, scale, layout, seenFrom, visible, now, start, hatch };

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
          <LaneHatches strands={strands} hatch={hatch} />
          <ChartDrawing
            frame={frame}
            bars={bars}
            tasks={tasks}
            waits={waits}
            windows={windows}
            flags={placedFlags}
            band={band}
          />
          <LaneBars
            frame={frame}
            lanes={lanes}
            chosen={chosen}
            reachable={reachable}
            {...(props.marked && { marked: props.marked })}
          />
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
