export type { HappensBefore } from "./happens-before.ts";
export { happensBefore } from "./happens-before.ts";
export type { Network, Precedence } from "./network.ts";
export { deadlockFinding, networkOf } from "./network.ts";
export type { Race, Races } from "./races.ts";
export { MOST_RACES, racesOf } from "./races.ts";
