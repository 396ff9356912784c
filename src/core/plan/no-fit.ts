import type { Message, MessageArguments } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Finding, OutlineStep, TimeWindow } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { Span, WindowSpans } from "../window/index.ts";

/** Converts a duration in ms to minutes, rounded to a tenth. */
const minutes = (time: number) => Math.round((time / 60_000) * 10) / 10;

/** Returns the spans in which all of the given windows are open. Each list of spans must be in order. */
function together(lists: readonly (readonly Span[])[]): readonly Span[] {
  return lists.reduce((ones, others) => {
    const shared: Span[] = [];
    for (let at = 0, otherAt = 0; ; ) {
      const one = ones[at];
      const other = others[otherAt];
      if (!one || !other) return shared;
      const from = one.from > other.from ? one.from : other.from;
      const to = one.to < other.to ? one.to : other.to;
      if (from < to) shared.push({ from, to });
      if (one.to < other.to) at += 1;
      else otherAt += 1;
    }
  });
}

/**
 * Returns the finding for a step that fits no span of its windows from `ready` on ([PLN4]). It tells by how much the
 * step misses. It also suggests the smallest earlier start and the smallest reduction of the duration that would make
 * the step fit, where they exist.
 */
export function noFitFinding(
  { step, pointer }: OutlineStep,
  procedureWindows: readonly TimeWindow[],
  ready: Duration,
  length: Duration,
  windows: WindowSpans,
): Finding {
  const known = step.within.filter((id) => windows.get(id));
  const names = known.map((id) => procedureWindows.find((one) => one.id === id)?.label ?? id);
  const lists = known.map((id) => windows.get(id) ?? []);
  const spans = lists.length > 0 ? together(lists) : [];
  const earliest = (list: readonly number[]) => (list.length > 0 ? Math.min(...list) : null);
  const latestStart = spans.map(({ from, to }) => ({ from, at: to - length }));
  const earlier = earliest(
    latestStart.filter(({ from, at }) => at >= Math.max(from, 0)).map(({ at }) => ready - at),
  );
  const rooms = spans.map(({ from, to }) => to - Math.max(from, ready)).filter((room) => room > 0);
  const shorter = earliest(rooms.map((room) => length - room));
  const which = { count: Math.max(1, known.length), windows: names };
  const why =
    shorter === null
      ? message("window/not-open-after", which)
      : message("window/too-short", {
          ...which,
          longest: minutes(length - shorter),
          short: minutes(shorter),
        });
  const byEarlier =
    earlier === null ? null : { earlier: minutes(earlier), at: (ready - earlier) as Duration };
  const byShorter = shorter === null || length - shorter <= NO_TIME ? null : { less: minutes(shorter) };
  const said = message("window/no-fit", {
    step: step.id,
    length: minutes(length),
    ready,
    why,
    mend: mendOf(byEarlier, byShorter, names),
  });
  return finding("error", "window/no-fit", pointer, said, { steps: [step.id], things: step.within });
}

/**
 * Returns the message for what would make the step fit: an earlier start, a shorter duration, either of them, or
 * nothing.
 */
function mendOf(
  byEarlier: MessageArguments<"window/fits-earlier"> | null,
  byShorter: MessageArguments<"window/fits-shorter"> | null,
  windows: readonly string[],
): Message {
  if (byEarlier && byShorter)
    return message("window/fits-earlier-or-shorter", { ...byEarlier, ...byShorter });
  if (byEarlier) return message("window/fits-earlier", byEarlier);
  return byShorter ? message("window/fits-shorter", byShorter) : message("window/fits-never", { windows });
}
