import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { Instant, StepId } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { Deviation, EarlyMark } from "./deviation.ts";
import type { EarliestStart } from "./gate.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/**
 * Returns what was not over when a step was marked done at `at`. It is only meaningful for a step that nobody holds
 * up; `start` is its earliest start, `null` when no window is left for it. A moment at which something ends counts as after it.
 */
export function earlyMarks(
  ledger: Ledger,
  entry: OutlineStep,
  start: EarliestStart | null,
  at: Instant,
): readonly EarlyMark[] {
  const { network } = ledger;
  const found: EarlyMark[] = [];
  for (const { from, lag, because } of network.before[entry.index] ?? []) {
    const predecessor = network.outline.steps[from]?.step.id;
    if (because !== "after" || lag <= 0 || predecessor === undefined) continue;
    const { finish } = progressOf(ledger, predecessor);
    const until = finish === null ? null : later(finish, lag);
    if (until !== null && until > at) found.push({ kind: "lag-not-over", step: predecessor, until });
  }
  const { notBefore } = entry.step;
  const set = notBefore === undefined ? at : later(ledger.petZero ?? ledger.opened.at, notBefore);
  if (set > at) found.push({ kind: "time-not-reached", until: set });
  const [window] = entry.step.within;
  if (start === null) {
    if (window !== undefined) found.push({ kind: "window-not-over", window, until: null });
  } else if (start.window !== null && start.at > at) {
    found.push({ kind: "window-not-over", window: start.window, until: start.at });
  } else if (start.hold !== null && start.at <= at) {
    found.push({ kind: "hold-not-over", since: start.hold.from });
  }
  return found;
}

/** Returns the deviation that an early mark of a step is. It stays one when what was awaited is over. */
export function earlyDeviation(step: StepId, early: EarlyMark, at: Instant): Deviation {
  return { kind: early.kind, step, record: null, text: earlyText(early), at };
}

/** Returns a sentence that says what was not over when a step was marked. */
export function earlyText(early: EarlyMark): Message {
  switch (early.kind) {
    case "lag-not-over":
      return message("walk/done-in-lag", { step: early.step });
    case "time-not-reached":
      return message("walk/done-before-time");
    case "window-not-over":
      return early.until === null
        ? message("walk/done-outside-windows", { window: early.window })
        : message("walk/done-before-window", { window: early.window });
    case "hold-not-over":
      return message("walk/done-in-hold");
  }
}
