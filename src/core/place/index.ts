export type { Way, Ways } from "./ways.ts";
export { waysOf } from "./ways.ts";
export type { Whereabouts } from "./whereabouts.ts";
export { isPlaced, whereaboutsOf } from "./whereabouts.ts";
