import { NORMAL_95 } from "./normal.ts";

/** An interval of shares from 0 to 1. */
export interface ShareInterval {
  readonly from: number;
  readonly to: number;
}

/** Returns the interval in which a share lies with 95 %, of which `count` of `of` were counted (Wilson 1927); `of` is above zero. */
export function wilsonInterval(count: number, of: number): ShareInterval {
  const z2 = NORMAL_95 ** 2;
  const share = count / of;
  const middle = (share + z2 / (2 * of)) / (1 + z2 / of);
  const half = (NORMAL_95 / (1 + z2 / of)) * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of * of));
  return { from: Math.max(0, middle - half), to: Math.min(1, middle + half) };
}
