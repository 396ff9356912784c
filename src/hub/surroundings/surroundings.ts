import { randomBytes } from "node:crypto";
import type { Instant } from "../../core/units/index.ts";

/** What a hub has from outside itself, so that tests can set it. */
export interface Surroundings {
  /** The hub's clock. */
  now(): Instant;
  /** So many bytes that nobody can guess. */
  randomBytes(count: number): Uint8Array;
}

/** The clock and the randomness of this machine. */
export const machineSurroundings: Surroundings = {
  now: () => Date.now() as Instant,
  randomBytes: (count) => randomBytes(count),
};
