import type { Duration, WindowId } from "../units/index.ts";
import type { WindowSpans } from "./window-spans.ts";

/** When a step may start, and the window that delayed it. */
export interface Fit {
  readonly start: Duration;
  /** The window that delayed the start; `null` when none did. */
  readonly bound: WindowId | null;
}

/**
 * The earliest start at or after `ready` at which the step lies wholly within one span of every named window ([PLN1]).
 * Returns `null` when no span fits before the windows end ([PLN4]).
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
 * The latest start at which the step is over by `end` and lies wholly within one span of every named window ([PLN2]).
 * Returns `null` when no span fits.
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
