import type { KeyboardEvent } from "react";
import { useMemo, useState } from "react";
import type { Wait } from "../../core/course/index.ts";
import { waitsOf } from "../../core/course/index.ts";
import type { Plan, Risk, Timeline } from "../../core/plan/index.ts";
import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { MapAtMoment, TouchedMoment } from "../worksite/index.ts";
import { bandOf, endOf, flagsOf } from "./chart-ends.ts";
import type { LaneBar } from "./lane-bar.ts";
import { laneBarsOf, shownStart } from "./lane-bar.ts";
import { NoTimeline } from "./no-timeline.tsx";
import { RiskMisses } from "./risk-misses.tsx";
import { StepPanel } from "./step-panel.tsx";
import { TimeChart } from "./time-chart.tsx";
import { ZOOMS, type Zoom } from "./time-scale.ts";
import { TimelineBar } from "./timeline-bar.tsx";
import { TimelineLegend } from "./timeline-legend.tsx";
import { TimelineTable } from "./timeline-table.tsx";
import { windowSpansOf } from "./window-spans.ts";
import "./timeline.css";

export interface TimelineViewProps {
  readonly outline: Outline;
  /** The plan, of a walk the plan of record; an amended walk is compared with the plan in force. */
  readonly plan: Plan;
  /** The walk at an instant; `null` shows the plan alone. */
  readonly state: WalkState | null;
  /** When the finish probably falls; `null` or absent while that is unknown. */
  readonly risk?: Risk | null;
  /** Called with the step that the reader chooses. */
  readonly onChoose?: (entry: OutlineStep) => void;
  /** Keeps the layout of a map that is a sketch in the file; absent where that cannot be done. */
  readonly onKeepLayout?: () => void;
}

/** Lanes as rows, time from left to right: the plan, and over it the walk as it went and as it is forecast. */
export function TimelineView(props: TimelineViewProps) {
  const { timeline } = props.plan;
  return timeline === null ? (
    <section className="timeline" aria-label={words("timeline/title")}>
      <NoTimeline plan={props.plan} />
    </section>
  ) : (
    <Drawn {...props} timeline={timeline} />
  );
}

/** A shorter wait is only the time between two taps. In ms. */
const SHORTEST_WAIT = 5_000;

const isWorthDrawing = ({ from, to }: Wait) => to - from > SHORTEST_WAIT;

const WIDE = "(min-width: 700px)";

/** The timeline of a plan that has one, as a chart or as a table. */
function Drawn(props: TimelineViewProps & { readonly timeline: Timeline }) {
  const { outline, plan, timeline, state, risk = null, onChoose, onKeepLayout } = props;
  const live = state !== null;
  const now = state?.phase === "closed" ? null : (state?.pet ?? null);
  const [zoom, setZoom] = useState<Zoom>(() =>
    !live && window.matchMedia(WIDE).matches ? "whole" : (ZOOMS[1]?.zoom ?? "whole"),
  );
  const [asTable, setAsTable] = useState(false);
  const [chosenKey, setChosenKey] = useState<string | null>(null);
  const lanes = useMemo(() => laneBarsOf(outline, timeline, state), [outline, timeline, state]);
  const course = state ? state.forecast : timeline.course;
  const waits = useMemo(() => {
    const all = course ? waitsOf(course) : [];
    return live ? all.filter(isWorthDrawing) : all;
  }, [course, live]);
  const spansById = state?.ledger.windows ?? plan.windows;
  const windows = useMemo(() => windowSpansOf(outline.procedure.windows, spansById), [outline, spansById]);
  const finishes = {
    finish: (state?.inForce ?? timeline.course).finish,
    forecast: state?.forecast?.finish ?? null,
    limit: outline.procedure.limits.elapsed ?? null,
    ended: state?.phase === "closed",
  };
  const start = state ? state.ledger.petZero : plan.start;
  const flags = flagsOf(finishes);
  const band = bandOf(risk);
  const end = endOf(flags, now, band);
  const bars = lanes.flat();
  const chosen = bars.find(({ key }) => key === chosenKey) ?? firstToShow(bars, state);
  const [moment] = useState(() => new TouchedMoment());

  const onKeyDown = (event: KeyboardEvent) => {
    const at = ZOOMS.findIndex((one) => one.zoom === zoom);
    const step = event.key === "+" || event.key === "=" ? 1 : event.key === "-" ? -1 : 0;
    const next = ZOOMS[at + step];
    if (step === 0 || asTable || event.ctrlKey || event.metaKey || !next) return;
    event.preventDefault();
    setZoom(next.zoom);
  };

  return (
    <section className="timeline" aria-label={words("timeline/title")} onKeyDown={onKeyDown}>
      <TimelineBar
        summary={{ ...finishes, risk, start }}
        zoom={zoom}
        onZoom={setZoom}
        asTable={asTable}
        onAsTable={setAsTable}
      />
      {risk && !finishes.ended && <RiskMisses outline={outline} risk={risk} />}
      {asTable ? (
        <TimelineTable outline={outline} lanes={lanes} waits={waits} live={live} start={start} />
      ) : (
        <>
          <TimeChart
            outline={outline}
            lanes={lanes}
            waits={waits}
            windows={windows}
            flags={flags}
            now={now}
            end={end}
            start={start}
            zoom={zoom}
            chosen={chosen}
            band={band}
            onTouch={moment.touch}
            onChoose={(bar) => {
              setChosenKey(bar.key);
              moment.touch(shownStart(bar));
              onChoose?.(bar.entry);
            }}
          />
          {chosen && <StepPanel outline={outline} bar={chosen} waits={waits} live={live} />}
          {course && (
            <MapAtMoment course={course} moment={moment} now={now} onKeepLayout={onKeepLayout ?? null} />
          )}
          <TimelineLegend
            live={live}
            hasWaits={waits.length > 0}
            hasBand={band !== null}
            hasJoint={bars.some(({ entry }) => entry.performers.length > 1)}
          />
        </>
      )}
    </section>
  );
}

/** The bar shown before the reader chooses one: the step in work, otherwise the first bar. */
function firstToShow(bars: readonly LaneBar[], state: WalkState | null): LaneBar | null {
  const working = state ? bars.find(({ flown }) => flown?.stage === "in-work") : undefined;
  return working ?? bars[0] ?? null;
}
