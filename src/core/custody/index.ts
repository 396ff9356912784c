export type { Custody } from "./custody.ts";
export {
  crewHolding,
  custodyAtStart,
  holderOf,
  isSameLocation,
  isWithin,
  moved,
  movedInTurn,
} from "./custody.ts";
