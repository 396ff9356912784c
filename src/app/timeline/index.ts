export { DrawnStrips } from "./drawn-strips.tsx";
export type { DrawnTimeline } from "./lane-bar.ts";
export { NoTimeline } from "./no-timeline.tsx";
export type { DrawnPlan } from "./plan-chart.tsx";
export { PointedTimeline } from "./pointed-timeline.tsx";
export { TimelineLegend } from "./timeline-legend.tsx";
export { type PairedTimeline, TimelinePair } from "./timeline-pair.tsx";
export { TimelineView } from "./timeline-view.tsx";
