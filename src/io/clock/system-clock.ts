import type { Instant } from "../../core/units/index.ts";

/** Tells the moment. Passed to whatever needs one, so that tests can set it. */
export type Clock = () => Instant;

/** The device's clock, in UTC. It may be wrong, and may be set while a walk runs. */
export const systemClock: Clock = () => Date.now() as Instant;
