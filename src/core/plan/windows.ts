import type { InstantSpan, Light } from "../light/index.ts";
import type { Procedure } from "../procedure/index.ts";
import type { Duration, Instant, WindowId } from "../units/index.ts";
import { between } from "../units/index.ts";

/** A span of time, both ends belonging to it, in PET. */
export interface Span {
  readonly from: Duration;
  readonly to: Duration;
}

/** The spans of each window in PET, in order of their start; `null` for a window whose spans are not known, which then binds nothing. */
export type WindowSpans = ReadonlyMap<WindowId, readonly Span[] | null>;

/** Nothing is looked for beyond this PET where windows come from an orbit or a site ([PLN4]). */
export const HORIZON = (24 * 3_600_000) as Duration;

/**
 * The spans of a procedure's windows in PET. Spans given as instants, and day and night, need the instant of PET 0
 * (`start`); day and night that have no spans in the file come from `light`. What is missing leaves a window not known.
 */
export function windowSpansOf(
  procedure: Procedure,
  start: Instant | null,
  light: Pick<Light, "spans"> | null = null,
): WindowSpans {
  return new Map(
    procedure.windows.map(({ id, kind, spans }) => {
      const given = spans ?? (kind === "listed" ? undefined : light?.spans?.[kind].map(asUtc));
      if (!given) return [id, null];
      const inPet: Span[] = [];
      for (const span of given) {
        if (span.clock === "pet") inPet.push({ from: span.from, to: span.to });
        else if (start !== null) inPet.push({ from: between(start, span.from), to: between(start, span.to) });
        else return [id, null];
      }
      const known = spans ? inPet : inPet.flatMap(upToHorizon);
      return [id, known.sort((a, b) => a.from - b.from)];
    }),
  );
}

/** A light may reach further than one plan looks, as that of a scan of starts does. */
const upToHorizon = ({ from, to }: Span): Span[] =>
  from >= HORIZON ? [] : [{ from, to: to > HORIZON ? HORIZON : to }];

const asUtc = ({ start, end }: InstantSpan) => ({ clock: "utc" as const, from: start, to: end });

/** When a step may start, and what made it so late. */
export interface Fit {
  readonly start: Duration;
  /** The window that put the start off; `null` when none did. */
  readonly bound: WindowId | null;
}

/**
 * The earliest start at or after `ready` so that the step lies wholly in one span of every window named ([PLN1]).
 * `null` when no span fits before the windows end ([PLN4]).
 */
export function earliestFit(
  ready: Duration,
  length: Duration,
  within: readonly WindowId[],
  windows: WindowSpans,
): Fit | null {
  let start = ready;
  let bound: WindowId | null = null;
  for (let moved = within.length > 0; moved; ) {
    moved = false;
    for (const id of within) {
      const spans = windows.get(id);
      if (!spans) continue;
      let best: Duration | null = null;
      for (const { from, to } of spans) {
        const at = from > start ? from : start;
        if (at + length <= to && (best === null || at < best)) best = at;
      }
      if (best === null) return null;
      if (best > start) {
        start = best;
        bound = id;
        moved = true;
      }
    }
  }
  return { start, bound };
}

/**
 * The latest start so that the step is over by `end` and lies wholly in one span of every window named ([PLN2]).
 * `null` when no span fits.
 */
export function latestFit(
  end: Duration,
  length: Duration,
  within: readonly WindowId[],
  windows: WindowSpans,
): Duration | null {
  let finish = end;
  for (let moved = within.length > 0; moved; ) {
    moved = false;
    for (const id of within) {
      const spans = windows.get(id);
      if (!spans) continue;
      let best: Duration | null = null;
      for (const { from, to } of spans) {
        const at = to < finish ? to : finish;
        if (at - length >= from && (best === null || at > best)) best = at;
      }
      if (best === null) return null;
      if (best < finish) {
        finish = best;
        moved = true;
      }
    }
  }
  return (finish - length) as Duration;
}
