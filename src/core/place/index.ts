export { LaidLine } from "./laid-line.ts";
export { reachFindings, sharedRouteFindings } from "./tether-findings.ts";
export type { LineSpan } from "./tether-line.ts";
export { lineSpansOf, routeKey } from "./tether-line.ts";
export { stepIdsOf, translationStep } from "./translation-step.ts";
export type { Way, Ways } from "./ways.ts";
export { waysOf, waysWhile } from "./ways.ts";
export type { Whereabouts } from "./whereabouts.ts";
export { isPlaced, whereaboutsOf } from "./whereabouts.ts";
