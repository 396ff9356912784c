import type { ShareInterval } from "./wilson.ts";
import { wilsonInterval } from "./wilson.ts";

/** What was counted in one cluster, whose members may be alike: `count` of `of`, which is above zero. */
export interface ClusterCount {
  readonly count: number;
  readonly of: number;
}

/**
 * Returns the interval in which a share lies with 95 %, counted in clusters whose members may be alike: that of Wilson for as many
 * independent members as tell as much (Rao & Scott 1992): n over the design effect, which is the variance among clusters over that
 * of n independent members, and never below 1. Where the clusters tell of no variance (there is but one, or all members came out the
 * same), each counts for one member. There is at least one cluster.
 */
export function clusteredInterval(clusters: readonly ClusterCount[]): ShareInterval {
  const of = clusters.reduce((sum, one) => sum + one.of, 0);
  const share = clusters.reduce((sum, one) => sum + one.count, 0) / of;
  const k = clusters.length;
  const apart = clusters.reduce((sum, one) => sum + (one.count - share * one.of) ** 2, 0);
  const variance = k > 1 ? (apart * k) / (k - 1) / of ** 2 : 0;
  const alike = share * (1 - share);
  const isTold = k > 1 && alike > 0;
  const members = isTold ? Math.max(1, Math.min(of, variance > 0 ? alike / variance : of)) : k;
  return wilsonInterval(share * members, members);
}
