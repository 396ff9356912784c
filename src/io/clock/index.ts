export type { ClockJump } from "./clock-jumps.ts";
export { watchClockJumps } from "./clock-jumps.ts";
export type { PageVisibility } from "./page-visibility.ts";
export type { Seconds } from "./seconds.ts";
export { secondsOf } from "./seconds.ts";
export type { Clock } from "./system-clock.ts";
export { systemClock } from "./system-clock.ts";
