import { useState } from "react";
import type { StepId } from "../../core/units/index.ts";
import { endOf, flagsOfPlan } from "./chart-ends.ts";
import type { DrawnPlan } from "./plan-chart.tsx";
import { PlanChart } from "./plan-chart.tsx";
import { ZOOMS, type Zoom } from "./time-scale.ts";
import { ZoomField } from "./zoom-field.tsx";
import "./timeline.css";

interface PointedTimelineProps {
  readonly plan: DrawnPlan;
  /** The step that is chosen; `null` for none. */
  readonly chosen: string | null;
  /** The steps that get a mark of their own, with what it means in words. */
  readonly marked: ReadonlyMap<StepId, string>;
  readonly onChoose: (step: string) => void;
  readonly onPick: (step: string) => void;
}

/** A plan along time for whoever points at its steps: arrow keys choose one, a tap or Enter picks it. */
export function PointedTimeline({ plan, chosen, marked, onChoose, onPick }: PointedTimelineProps) {
  // Near enough that bars can be told apart.
  const [zoom, setZoom] = useState<Zoom>(ZOOMS[1].zoom);
  return (
    <div className="timeline-pair">
      <ZoomField zoom={zoom} onZoom={setZoom} />
      <PlanChart
        plan={plan}
        end={endOf(flagsOfPlan(plan), null, null)}
        zoom={zoom}
        chosen={chosen}
        marked={marked}
        onChoose={onChoose}
        onPick={onPick}
      />
    </div>
  );
}
