export { hubKey } from "./hub-key.ts";
export type { Word } from "./witness.ts";
export { Witness } from "./witness.ts";
