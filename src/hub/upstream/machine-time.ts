import { setTimeout } from "node:timers/promises";
import type { LinkTime } from "../../core/link/index.ts";
import type { Surroundings } from "../surroundings/index.ts";

/** The time and the randomness of this machine, for links. */
export function machineTime({ now }: Pick<Surroundings, "now">): LinkTime {
  return {
    now,
    random: Math.random,
    wait: (ms, signal) => setTimeout(ms, undefined, { signal }).catch(() => {}),
  };
}
