export { DrawnStrips } from "./drawn-strips.tsx";
export { type PairedTimeline, TimelinePair } from "./timeline-pair.tsx";
export { TimelineView } from "./timeline-view.tsx";
