export type { Custody } from "./custody.ts";
export { custodyAtStart, holderOf, isWithin, moved, movedInTurn } from "./custody.ts";
