export { hubKey } from "./hub-key.ts";
export type { Admitted } from "./witness.ts";
export { Witness } from "./witness.ts";
