import { words } from "../../words/index.ts";
import type { Zoom } from "./time-scale.ts";
import type { TimelineSummaryProps } from "./timeline-summary.tsx";
import { TimelineSummary } from "./timeline-summary.tsx";
import { ZoomField } from "./zoom-field.tsx";

interface TimelineBarProps {
  readonly summary: TimelineSummaryProps;
  readonly zoom: Zoom;
  readonly onZoom: (zoom: Zoom) => void;
  /** True while the table is shown in place of the chart. */
  readonly asTable: boolean;
  readonly onAsTable: (asTable: boolean) => void;
}

/** The bar above the timeline: its finish in words, the zoom, and the switch between chart and table. */
export function TimelineBar({ summary, zoom, onZoom, asTable, onAsTable }: TimelineBarProps) {
  return (
    <div className="timeline-bar">
      <p className="timeline-summary">
        <TimelineSummary {...summary} />
      </p>
      {!asTable && <ZoomField zoom={zoom} onZoom={onZoom} />}
      <button type="button" className="plain-button" onClick={() => onAsTable(!asTable)}>
        {words(asTable ? "timeline/as-picture" : "timeline/as-table")}
      </button>
    </div>
  );
}
