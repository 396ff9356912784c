export { AudienceView } from "./audience-view.tsx";
export { BriefView } from "./brief-view.tsx";
export { Storyboard } from "./storyboard.tsx";
export { readBeside, useBesideChoices } from "./use-beside.ts";
export type { Briefed } from "./use-briefed.ts";
export { useBriefedPlan, useBriefedWalk } from "./use-briefed.ts";
