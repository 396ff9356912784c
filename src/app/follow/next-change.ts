import type { Outline } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { clockText, minus } from "../../core/units/index.ts";
import type { WindowSpans } from "../../core/window/index.ts";
import { words } from "../../words/index.ts";

/** The next time that a window opens or closes, in words. */
export interface NextChange {
  readonly title: string;
  readonly words: string;
  /** False when the times of the windows are not known at all. */
  readonly isKnown: boolean;
}

/**
 * The next opening or closing of any window whose spans are known. Says so in words when there are windows but none is
 * known; returns `null` without windows.
 */
export function nextChange(outline: Outline, windows: WindowSpans, pet: Duration | null): NextChange | null {
  const { procedure } = outline;
  if (procedure.windows.length === 0) return null;
  const at = pet ?? (0 as Duration);
  const edges = procedure.windows.flatMap(({ id, label }) =>
    (windows.get(id) ?? []).flatMap(({ from, to }) => [
      { window: label ?? id, key: "follow/window-in", time: from } as const,
      { window: label ?? id, key: "follow/window-ends-in", time: to } as const,
    ]),
  );
  const next = edges.filter(({ time }) => time > at).sort((a, b) => a.time - b.time)[0];
  if (next)
    return {
      title: words(next.key, { window: next.window }),
      words: clockText(minus(next.time, at)),
      isKnown: true,
    };
  const names = procedure.windows.map(({ id, label }) => label ?? id).join(words("figures/between"));
  return edges.length === 0
    ? { title: names, words: words("follow/window-times-unknown"), isKnown: false }
    : { title: names, words: words("follow/window-no-more"), isKnown: true };
}
