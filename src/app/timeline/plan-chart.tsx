import { useMemo, useState } from "react";
import type { Wait } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant, StepId } from "../../core/units/index.ts";
import type { WindowSpans } from "../../core/window/index.ts";
import { flagsOfPlan } from "./chart-ends.ts";
import type { DrawnTimeline } from "./lane-bar.ts";
import { laneBarsOf } from "./lane-bar.ts";
import { StepPanel } from "./step-panel.tsx";
import { TimeChart } from "./time-chart.tsx";
import type { Zoom } from "./time-scale.ts";
import { windowSpansOf } from "./window-spans.ts";

/** What of a plan is drawn along time. */
export interface DrawnPlan {
  readonly outline: Outline;
  /** The instant of PET 0; `null` when it is not known. */
  readonly start: Instant | null;
  readonly windows: WindowSpans;
  readonly timeline: DrawnTimeline;
  readonly waits: readonly Wait[];
}

interface PlanChartProps {
  readonly plan: DrawnPlan;
  /** The PET at the right edge. */
  readonly end: Duration;
  readonly zoom: Zoom;
  /** The step that is chosen; `null` for none. */
  readonly chosen: string | null;
  /** The steps that get a mark of their own, with what it means in words. */
  readonly marked: ReadonlyMap<StepId, string>;
  readonly onChoose: (step: string) => void;
  /** Called with a step that is tapped or taken by Enter, where that does more than choosing it. */
  readonly onPick?: (step: string) => void;
}

/** The lanes of a plan over time, and everything about the step that is chosen. */
export function PlanChart({ plan, end, zoom, chosen, marked, onChoose, onPick }: PlanChartProps) {
  const { outline, timeline, waits, windows: spans, start } = plan;
  const lanes = useMemo(() => laneBarsOf(outline, timeline, null), [outline, timeline]);
  const windows = useMemo(() => windowSpansOf(outline.procedure.windows, spans), [outline, spans]);
  // A joint step has a bar in several lanes: the one that was reached stays the one.
  const [reached, setReached] = useState<string | null>(null);
  const bars = lanes.flat().filter(({ entry }) => entry.step.id === chosen);
  const bar = bars.find(({ key }) => key === reached) ?? bars[0] ?? null;
  return (
    <>
      <TimeChart
        outline={outline}
        lanes={lanes}
        waits={waits}
        windows={windows}
        flags={flagsOfPlan(plan)}
        now={null}
        end={end}
        start={start}
        zoom={zoom}
        band={null}
        chosen={bar}
        showsChosen={onPick !== undefined}
        marked={marked}
        onTouch={NOTHING}
        onChoose={({ key, entry }) => {
          setReached(key);
          onChoose(entry.step.id);
        }}
        {...(onPick && { onPick: ({ entry }) => onPick(entry.step.id) })}
      />
      {bar && <StepPanel outline={outline} bar={bar} waits={waits} live={false} />}
    </>
  );
}

const NOTHING = () => {};
