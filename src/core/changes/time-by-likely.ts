import type { Fields, Step } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { formatDuration } from "../units/index.ts";

/**
 * The `time` of a step, as a file has it, with another likely duration. Low and high keep their ratio to it; a step
 * without a time of its own, or of none, gets one duration.
 */
export function timeByLikely({ time }: Pick<Step, "time">, likely: Duration): Fields[string] {
  if (!time || time.likely === 0) return formatDuration(likely);
  const scaled = (part: Duration) =>
    formatDuration((Math.round((part * likely) / time.likely / 1000) * 1000) as Duration);
  return { low: scaled(time.low), likely: formatDuration(likely), high: scaled(time.high) };
}
