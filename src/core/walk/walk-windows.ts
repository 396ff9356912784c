import { lightFrom } from "../plan/index.ts";
import type { Instant } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import { windowSpansOf } from "../window/index.ts";
import type { Ledger } from "./ledger.ts";

/**
 * Returns the windows of a walk in PET by its source of light, counted from `start`, which is `null` while the start is
 * unknown.
 */
export function walkWindows(
  { light, inForce: { outline } }: Pick<Ledger, "light" | "inForce">,
  start: Instant | null,
): WindowSpans {
  return windowSpansOf(outline.procedure, start, light && start !== null ? lightFrom(light, start) : null);
}
