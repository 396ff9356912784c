import type { Said } from "../../words/index.ts";
import type { Instant } from "../units/index.ts";
import type { FarHub, Follower, Hello } from "./exchange.ts";

/** How far what the other side had stored is fetched, in entries. */
export interface Fetching {
  readonly come: number;
  /** At most. */
  readonly of: number;
}

/** How a link stands. */
export interface LinkState {
  /** `linked` while the stream of the other side is open and was heard; `ended` once the other side turned this device away. */
  readonly kind: "linking" | "linked" | "ended";
  /** Why it ended, or what kept the last attempt from succeeding; `null` when nothing is known to be wrong over there. */
  readonly words: Said | null;
  /** What is wrong on this side (its store, mostly), though it is tried again; `null` when nothing is. */
  readonly trouble: Said | null;
  /** How many entries the other side has not confirmed. */
  readonly unsent: number;
  /** When anything was last heard from the other side, by the clock of this device, to the second. */
  readonly heardAt: Instant | null;
  /** What the other side said of itself last. */
  readonly hello: Hello | null;
  /** As last heard, whether linked or not. */
  readonly followers: readonly Follower[];
  /** As last heard, whether linked or not. */
  readonly beyond: readonly FarHub[];
  /** How many entries of the other side could not be read and are missing here. */
  readonly unreadable: number;
  /** `null` when all that the other side had stored is here, or it does not say. */
  readonly fetching: Fetching | null;
}

/** The state of a link that has not begun. */
export const UNLINKED: LinkState = {
  kind: "linking",
  words: null,
  trouble: null,
  unsent: 0,
  heardAt: null,
  hello: null,
  followers: [],
  beyond: [],
  unreadable: 0,
  fetching: null,
};
