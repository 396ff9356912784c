import type { UIEvent } from "react";
import { useMemo, useState } from "react";
import { waitsOf } from "../../core/course/index.ts";
import type { Plan, Timeline } from "../../core/plan/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { endOf, flagsOfPlan } from "./chart-ends.ts";
import { NoTimeline } from "./no-timeline.tsx";
import { PlanChart } from "./plan-chart.tsx";
import type { Zoom } from "./time-scale.ts";
import { ZoomField } from "./zoom-field.tsx";
import "./timeline.css";

/** One of two plans that are drawn one over the other. */
export interface PairedTimeline {
  readonly name: string;
  readonly plan: Plan;
  /** The steps that get a mark, with what it means in words. */
  readonly marked: ReadonlyMap<StepId, string>;
}

interface TimelinePairProps {
  readonly upper: PairedTimeline;
  readonly lower: PairedTimeline;
}

/** Two plans one over the other, on one scale from PET 0. A step that is chosen in one of them is chosen in the other too. */
export function TimelinePair({ upper, lower }: TimelinePairProps) {
  const [zoom, setZoom] = useState<Zoom>("whole");
  const [chosen, setChosen] = useState<string | null>(null);
  const both = [upper, lower];
  const end = Math.max(...both.map(({ plan }) => endOf(flagsOfPlan(plan), null, null))) as Duration;
  return (
    <section
      className="timeline-pair"
      aria-label={words("timeline/pair")}
      onScrollCapture={(event: UIEvent<HTMLElement>) => scrollAlike(event.currentTarget, event.target)}
    >
      <ZoomField zoom={zoom} onZoom={setZoom} />
      {both.map((one, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: there are two places, and both may have one name.
        <section key={place} aria-label={one.name}>
          <h3>{one.name}</h3>
          {one.plan.timeline ? (
            <Paired
              {...one}
              timeline={one.plan.timeline}
              end={end}
              zoom={zoom}
              chosen={chosen}
              onChoose={setChosen}
            />
          ) : (
            <NoTimeline plan={one.plan} />
          )}
        </section>
      ))}
    </section>
  );
}

/** Scrolls all charts of a pair to where one of them was scrolled. */
function scrollAlike(pair: HTMLElement, scrolled: EventTarget): void {
  if (!(scrolled instanceof HTMLElement)) return;
  for (const other of pair.querySelectorAll(".timeline-scroll"))
    if (other !== scrolled && other.scrollLeft !== scrolled.scrollLeft)
      other.scrollLeft = scrolled.scrollLeft;
}

interface PairedProps extends PairedTimeline {
  readonly timeline: Timeline;
  readonly end: Duration;
  readonly zoom: Zoom;
  readonly chosen: string | null;
  readonly onChoose: (step: string) => void;
}

function Paired({ plan, timeline, marked, end, zoom, chosen, onChoose }: PairedProps) {
  const { outline, windows, start } = plan;
  const drawn = useMemo(
    () => ({ outline, windows, start, timeline, waits: waitsOf(timeline.course) }),
    [outline, windows, start, timeline],
  );
  return <PlanChart plan={drawn} end={end} zoom={zoom} chosen={chosen} marked={marked} onChoose={onChoose} />;
}
