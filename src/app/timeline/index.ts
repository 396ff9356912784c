export { DrawnStrips } from "./drawn-strips.tsx";
export { NoTimeline } from "./no-timeline.tsx";
export { type PairedTimeline, TimelinePair } from "./timeline-pair.tsx";
export { TimelineView } from "./timeline-view.tsx";
