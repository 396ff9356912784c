export type { Custody } from "./custody.ts";
export { custodyAtStart, holderOf, isWithin, moved } from "./custody.ts";
