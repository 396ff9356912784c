import type { Finding, OutlineStep, TimeWindow } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { clockText, NO_TIME } from "../units/index.ts";
import type { Span, WindowSpans } from "../window/index.ts";

const minutes = (time: number) => `${Math.round((time / 60_000) * 10) / 10} min`;

/** The times at which all of several windows are open, each list of spans in order. */
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
 * The finding for a step that fits no span of its windows from `ready` on ([PLN4]): by how much it misses, and what would make it
 * fit, starting earlier or taking less time, whichever is the least change of its kind.
 */
export function noFitFinding(
  { step, pointer }: OutlineStep,
  procedureWindows: readonly TimeWindow[],
  ready: Duration,
  length: Duration,
  windows: WindowSpans,
): Finding {
  const known = step.within.filter((id) => windows.get(id));
  const names = known.map((id) => procedureWindows.find((one) => one.id === id)?.label ?? id).join(" and ");
  const lists = known.map((id) => windows.get(id) ?? []);
  const spans = lists.length > 0 ? together(lists) : [];
  const earliest = (list: readonly number[]) => (list.length > 0 ? Math.min(...list) : null);
  const latestStart = spans.map(({ from, to }) => ({ from, at: to - length }));
  const earlier = earliest(
    latestStart.filter(({ from, at }) => at >= Math.max(from, 0)).map(({ at }) => ready - at),
  );
  const rooms = spans.map(({ from, to }) => to - Math.max(from, ready)).filter((room) => room > 0);
  const shorter = earliest(rooms.map((room) => length - room));
  const open = known.length > 1 ? "are open together" : "is open";
  const lead = `"${step.id}" takes ${minutes(length)} and can start at PET ${clockText(ready)} at the earliest`;
  const why =
    shorter === null
      ? `but ${names} ${known.length > 1 ? "are not open together" : "is not open"} after that`
      : `but after that ${names} ${open} for ${minutes(length - shorter)} at the longest, ${minutes(shorter)} too short`;
  const mends = [
    ...(earlier === null
      ? []
      : [
          `if it could start ${minutes(earlier)} earlier, by PET ${clockText((ready - earlier) as Duration)}`,
        ]),
    ...(shorter === null || length - shorter <= NO_TIME ? [] : [`if it took ${minutes(shorter)} less`]),
  ];
  const mend =
    mends.length > 0 ? ` It would fit ${mends.join(", or ")}.` : ` No span of ${names} is ever long enough.`;
  return finding("error", "window/no-fit", pointer, `${lead}, ${why}.${mend}`, {
    steps: [step.id],
    things: step.within,
  });
}
