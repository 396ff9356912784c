import type { WindowSpans } from "../plan/index.ts";
import { lightFrom, windowSpansOf } from "../plan/index.ts";
import type { Instant } from "../units/index.ts";
import type { Opened } from "./ledger.ts";

/** The windows of a walk in PET, from a start; `null` when the start is not known yet. */
export function walkWindows({ outline, light }: Opened, start: Instant | null): WindowSpans {
  return windowSpansOf(outline.procedure, start, light && start !== null ? lightFrom(light, start) : null);
}
