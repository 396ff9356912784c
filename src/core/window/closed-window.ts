import type { Duration, WindowId } from "../units/index.ts";
import { earliestFit } from "./window-fit.ts";
import type { WindowSpans } from "./window-spans.ts";

/** A window that keeps a step from starting, and the PET from which it no longer does. */
export interface ClosedWindow {
  readonly window: WindowId;
  readonly until: Duration;
}

/**
 * The window that keeps a step of a length from starting at a PET ([PLN3]): the one in whose spans alone it would fit
 * last, counted from that PET, until then; of equals the first named. Returns `null` when each of them lets it start.
 * A window in which it never fits again is passed over.
 *
 * Who asks again from `until` on gets the windows one after the other, up to the start of the step.
 */
export function closedWindowAt(
  at: Duration,
  length: Duration,
  within: readonly WindowId[],
  windows: WindowSpans,
): ClosedWindow | null {
  let last: ClosedWindow | null = null;
  for (const window of within) {
    const until = earliestFit(at, length, [window], windows)?.start ?? at;
    if (until > (last?.until ?? at)) last = { window, until };
  }
  return last;
}
