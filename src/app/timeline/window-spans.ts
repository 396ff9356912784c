import type { TimeWindow } from "../../core/procedure/index.ts";
import type { WindowSpans } from "../../core/window/index.ts";
import { stackSpans } from "./stack-spans.ts";
import type { WindowSpan } from "./time-ground.tsx";

/** The spans of all windows, in rows in which they do not overlap. */
export function windowSpansOf(windows: readonly TimeWindow[], spans: WindowSpans): WindowSpan[] {
  return stackSpans(
    windows.flatMap((window) => (spans.get(window.id) ?? []).map((span) => ({ ...span, window }))),
  );
}
