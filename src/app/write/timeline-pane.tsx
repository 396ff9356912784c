import { useMemo, useState } from "react";
import { outlineOf } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { NoTimeline, PointedTimeline } from "../timeline/index.ts";
import type { WrittenTimeline } from "./written-timeline.ts";

interface TimelinePaneProps {
  /** `null` until there is an answer. */
  readonly timeline: WrittenTimeline | null;
  /** True while it is of an earlier state of the manuscript. */
  readonly isBehind: boolean;
  /** True when it cannot be had on this device. */
  readonly isBroken: boolean;
  /** The step that is selected in the table; `null` for none. */
  readonly selected: string | null;
  /** True while the next step that is tapped becomes what the selected one comes after. */
  readonly isLinking: boolean;
  readonly onSelect: (step: string) => void;
  readonly onLink: (step: string) => void;
}

/** The timeline of what is being written ([WRT3]): a tap on a step selects it, or lets the selected one come after it. */
export function TimelinePane(props: TimelinePaneProps) {
  const { timeline, isBehind, isBroken, selected, isLinking, onSelect, onLink } = props;
  const outline = useMemo(() => timeline?.procedure && outlineOf(timeline.procedure), [timeline]);
  // Where the arrow keys went while a step is linked: the selected one stays the one that waits.
  const [reached, setReached] = useState<{ readonly from: string | null; readonly step: string } | null>(
    null,
  );
  const marked = useMemo(
    () =>
      new Map(isLinking && selected !== null ? [[selected as StepId, words("write/waits-for-tapped")]] : []),
    [isLinking, selected],
  );
  if (isBroken || timeline === null)
    return <p role="status">{words(isBroken ? "write/no-worker-timeline" : "write/planning")}</p>;
  if (timeline.procedure === null || !outline)
    return (
      <section className="write-timeline" aria-label={words("write/timeline")} aria-busy={isBehind}>
        <NoTimeline plan={timeline.procedure === null ? timeline : NO_FINDINGS} />
      </section>
    );
  const isThere = selected === null || timeline.timeline.course.steps.has(selected as StepId);
  return (
    <section className="write-timeline" aria-label={words("write/timeline")} aria-busy={isBehind}>
      <p className="hint">{words(isLinking ? "write/timeline-link" : "write/timeline-how")}</p>
      {!isThere && <p role="status">{words("write/not-on-timeline")}</p>}
      <PointedTimeline
        plan={{ ...timeline, outline }}
        chosen={isLinking && reached?.from === selected ? reached.step : selected}
        marked={marked}
        onChoose={(step) => (isLinking ? setReached({ from: selected, step }) : onSelect(step))}
        onPick={(step) => {
          if (isLinking) onLink(step);
        }}
      />
    </section>
  );
}

const NO_FINDINGS = { findings: [] };
