import type { KeyboardEvent, ReactNode } from "react";
import { useMemo, useState } from "react";
import type { Wait } from "../../core/course/index.ts";
import { waitsOf } from "../../core/course/index.ts";
import type { Plan, Risk, Timeline } from "../../core/plan/index.ts";
import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import type { Span } from "../../core/window/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";
import type { LaneBar } from "./lane-bar.ts";
import { laneBarsOf } from "./lane-bar.ts";
import { stackSpans } from "./stack-spans.ts";
import { StepPanel } from "./step-panel.tsx";
import { differenceText } from "./step-words.ts";
import { TimeChart } from "./time-chart.tsx";
import type { ChartFlag } from "./time-flag.tsx";
import type { WindowSpan } from "./time-ground.tsx";
import { ZOOMS, type Zoom } from "./time-scale.ts";
import { TimelineLegend } from "./timeline-legend.tsx";
import { TimelineTable } from "./timeline-table.tsx";
import "./timeline.css";

export interface TimelineViewProps {
  readonly outline: Outline;
  /** The plan that the walk is compared with. */
  readonly plan: Plan;
  /** The walk at an instant; `null` shows the plan alone. */
  readonly state: WalkState | null;
  /** When the finish probably falls; `null` or absent while that is unknown. */
  readonly risk?: Risk | null;
  /** Called with the step that the reader chooses. */
  readonly onChoose?: (entry: OutlineStep) => void;
}

/** Lanes as rows, time from left to right: the plan, and over it the walk as it went and as it is forecast. */
export function TimelineView(props: TimelineViewProps) {
  const { timeline } = props.plan;
  return timeline === null ? <NoTimeline plan={props.plan} /> : <Drawn {...props} timeline={timeline} />;
}

function NoTimeline({ plan }: { readonly plan: Plan }) {
  return (
    <section className="timeline" aria-label={words("timeline/title")}>
      <p>{words("timeline/none")}</p>
      <ul>
        {plan.findings.map(({ code, pointer, message: said }) => (
          <li key={`${code} ${pointer}`}>{inWords(said)}</li>
        ))}
      </ul>
    </section>
  );
}

/** A shorter wait is only the time between two taps. In ms. */
const SHORTEST_WAIT = 5_000;

const isWorthDrawing = ({ from, to }: Wait) => to - from > SHORTEST_WAIT;

const WIDE = "(min-width: 700px)";
const ROOM_BEHIND = 4 * 60_000;

function Drawn(props: TimelineViewProps & { readonly timeline: Timeline }) {
  const { outline, plan, timeline, state, risk = null, onChoose } = props;
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
  const windows = useMemo((): WindowSpan[] => {
    const spans = outline.procedure.windows.flatMap((window) =>
      (spansById.get(window.id) ?? []).map((span) => ({ ...span, window })),
    );
    return stackSpans(spans);
  }, [outline, spansById]);
  const limit = outline.procedure.limits.elapsed;
  const forecast = state?.forecast?.finish ?? null;
  const flags = flagsOf(timeline.course.finish, forecast, limit ?? null, state?.phase === "closed");
  const end = endOf(flags, now, bandOf(risk));
  const bars = lanes.flat();
  const chosen = bars.find(({ key }) => key === chosenKey) ?? firstToShow(bars, state);

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
      <div className="timeline-bar">
        <p className="timeline-summary">
          <Summary
            finish={timeline.course.finish}
            forecast={forecast}
            limit={limit ?? null}
            ended={state?.phase === "closed"}
            odds={risk?.withinLimit ?? null}
          />
        </p>
        {!asTable && (
          <fieldset className="timeline-zoom">
            <legend className="heard-only">{words("timeline/zoom")}</legend>
            {ZOOMS.map((one) => (
              <button
                key={one.label}
                type="button"
                className="plain-button"
                aria-pressed={zoom === one.zoom}
                onClick={() => setZoom(one.zoom)}
              >
                {words(one.label)}
              </button>
            ))}
          </fieldset>
        )}
        <button type="button" className="plain-button" onClick={() => setAsTable(!asTable)}>
          {words(asTable ? "timeline/as-picture" : "timeline/as-table")}
        </button>
      </div>
      {asTable ? (
        <TimelineTable outline={outline} lanes={lanes} waits={waits} live={live} />
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
            zoom={zoom}
            chosen={chosen}
            band={bandOf(risk)}
            onChoose={(bar) => {
              setChosenKey(bar.key);
              onChoose?.(bar.entry);
            }}
          />
          {chosen && <StepPanel outline={outline} bar={chosen} waits={waits} live={live} />}
          <TimelineLegend
            live={live}
            hasWaits={waits.length > 0}
            hasBand={bandOf(risk) !== null}
            hasJoint={bars.some(({ entry }) => entry.performers.length > 1)}
          />
        </>
      )}
    </section>
  );
}

interface SummaryProps {
  readonly finish: Duration;
  readonly forecast: Duration | null;
  readonly limit: Duration | null;
  readonly ended: boolean;
  readonly odds: number | null;
}

function Summary({ finish, forecast, limit, ended, odds }: SummaryProps) {
  const last = forecast ?? finish;
  return (
    <>
      <Worded message={finishMessage(finish, forecast, ended)} marks={STRONG} />
      {limit !== null && (
        <>
          {` · ${words("timeline/limit", { at: limit })} · `}
          <strong>
            {last <= limit
              ? words("timeline/margin", { time: (limit - last) as Duration })
              : words("timeline/over-limit", { time: (last - limit) as Duration })}
          </strong>
          {odds !== null &&
            !ended &&
            ` · ${words("timeline/within-limit", { share: Math.round(odds * 100) })}`}
        </>
      )}
    </>
  );
}

const STRONG = { strong: (inside: ReactNode) => <strong>{inside}</strong> };

function finishMessage(finish: Duration, forecast: Duration | null, ended: boolean): Message {
  if (forecast === null) return message("timeline/planned-finish-strong", { at: finish });
  return ended
    ? message("timeline/last-step-done-strong", { at: forecast })
    : message("timeline/forecast-finish-strong", {
        at: forecast,
        difference: differenceText(forecast - finish),
      });
}

/** The PETs between which the finish falls in eight samples of ten. */
function bandOf(risk: Risk | null): Span | null {
  if (risk?.p10 == null || risk.p90 === null || risk.p90 === risk.p10) return null;
  return { from: risk.p10 as Duration, to: risk.p90 as Duration };
}

function flagsOf(
  finish: Duration,
  forecast: Duration | null,
  limit: Duration | null,
  ended: boolean,
): ChartFlag[] {
  const flags: ChartFlag[] = [
    { kind: "finish", pet: finish, words: words("timeline/planned-finish", { at: finish }) },
  ];
  if (forecast !== null) {
    const name = words(ended ? "timeline/last-step-done" : "timeline/forecast-finish", { at: forecast });
    flags.push({ kind: "forecast", pet: forecast, words: name });
  }
  if (limit !== null)
    flags.push({ kind: "limit", pet: limit, words: words("timeline/limit", { at: limit }) });
  return flags;
}

/** The right edge: a little after the last thing to show, in whole steps so that it does not creep each second. */
function endOf(flags: readonly ChartFlag[], now: Duration | null, band: Span | null): Duration {
  const last = flags.reduce((most, { pet }) => Math.max(most, pet), Math.max(now ?? 0, band?.to ?? 0));
  return (Math.ceil((last + ROOM_BEHIND) / (5 * 60_000)) * 5 * 60_000) as Duration;
}

/** The bar shown before the reader chooses one: the step in work, otherwise the first bar. */
function firstToShow(bars: readonly LaneBar[], state: WalkState | null): LaneBar | null {
  const working = state ? bars.find(({ flown }) => flown?.stage === "in-work") : undefined;
  return working ?? bars[0] ?? null;
}
