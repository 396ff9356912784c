import type { CrewPlace, TetherLine, Wait } from "../course/index.ts";
import type { CrewMember } from "../procedure/index.ts";
import type { CrewId, ItemId, PlaceId, StepId } from "../units/index.ts";

/** A spot on the map: `share` (0 to 1) of the straight piece from one place to another. At a place both are the same. */
export interface Spot {
  readonly from: PlaceId;
  readonly to: PlaceId;
  readonly share: number;
}

/** What somebody does at a moment. `ready`: nothing, and nothing in the course says what for. */
export type Doing = "works" | "moves" | "waits" | "ready" | "finished";

/** A tether's line as far as its crew member has come. */
export interface WalkedLine extends TetherLine {
  /** The places that the line runs over from its anchor; it goes on from the last one to where its crew member is. */
  readonly over: readonly PlaceId[];
}

/** One crew member at a moment. */
export interface PersonAt {
  readonly crew: CrewId;
  readonly call: string;
  readonly station: CrewMember["station"];
  /** The number of the look of the strand, from 1 to 6. */
  readonly look: number;
  /** `null` for those whose place the procedure does not tell. */
  readonly place: CrewPlace | null;
  /** Where on the map that is; `null` as for `place`. */
  readonly spot: Spot | null;
  readonly doing: Doing;
  /** Their steps in work. */
  readonly steps: readonly StepId[];
  /** What they wait for; `null` unless `doing` is `waits`. */
  readonly wait: Wait | null;
  /** What they hold, with what is packed in it. */
  readonly items: readonly ItemId[];
  /** `null` without a tether. */
  readonly line: WalkedLine | null;
}
