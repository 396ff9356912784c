export type { Surroundings } from "./surroundings.ts";
export { machineSurroundings } from "./surroundings.ts";
