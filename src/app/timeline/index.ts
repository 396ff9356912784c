export { DrawnStrips } from "./drawn-strips.tsx";
export { TimelineView } from "./timeline-view.tsx";
