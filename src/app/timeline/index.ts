export { TimelineView } from "./timeline-view.tsx";
