export type { TakenOver } from "./learn-view.tsx";
export { LearnView } from "./learn-view.tsx";
export { StepStrip } from "./step-strip.tsx";
export { StripLegend } from "./strip-legend.tsx";
export type { Told } from "./use-walks-told.ts";
export { useWalksTold } from "./use-walks-told.ts";
export type { OpenWalk } from "./walk-marks.tsx";
export { WalkMarks } from "./walk-marks.tsx";
export type { WalksTold } from "./walks-request.ts";
