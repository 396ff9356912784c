export { newDeviceSource, newWalkId } from "./new-ids.ts";
export type { RandomBytes } from "./random-text.ts";
export { platformRandomBytes, randomText } from "./random-text.ts";
