import type { Change, TimeWindow } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { formatDuration, formatInstant, later, NO_TIME, plus } from "../units/index.ts";

/** True for a window that has times of its own, which can be shifted. Others come with the start and its light. */
export const canBeShifted = ({ spans = [] }: TimeWindow): boolean => spans.length > 0;

/**
 * The change that makes a window come so much later, or earlier below zero. Of a span that would begin before PET 0 the
 * rest is left, or nothing. A window without times of its own is left as it is by it.
 */
export function shiftedWindow({ id, spans = [] }: TimeWindow, by: Duration): Change {
  return { change: id, list: "windows", set: { spans: spans.flatMap(shiftedSpan(by)) } };
}

type WindowSpan = NonNullable<TimeWindow["spans"]>[number];

const shiftedSpan = (by: Duration) => (span: WindowSpan) => {
  if (span.clock === "utc")
    return [{ from: formatInstant(later(span.from, by)), to: formatInstant(later(span.to, by)) }];
  const [from, to] = [plus(span.from, by), plus(span.to, by)];
  return to <= NO_TIME
    ? []
    : [{ from: formatDuration(from > NO_TIME ? from : NO_TIME), to: formatDuration(to) }];
};
