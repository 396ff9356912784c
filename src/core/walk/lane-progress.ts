import { bisectLeft } from "d3-array";
import type { StepId } from "../units/index.ts";
import type { LaneCommand, LaneStatus } from "./lane-machine.ts";
import { statusAfter } from "./lane-machine.ts";
import type { LaneProgress, Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/** Follows a lane over its complete steps, from its step `from` on (from its first step when that is `null`). */
function followed(ledger: Ledger, lane: number, from: StepId | null): Pick<LaneProgress, "next" | "free"> {
  const { outline } = ledger.inForce;
  const indices = ledger.network.lanes[lane] ?? [];
  // A lane holds its steps in reading order.
  let position = from === null ? 0 : bisectLeft(indices, outline.step(from)?.index ?? 0);
  let free = from === null ? null : (ledger.lanes[lane]?.free ?? null);
  for (; position < indices.length; position += 1) {
    const id = outline.steps[indices[position] ?? -1]?.step.id;
    if (id === undefined) break;
    const { status, finish } = progressOf(ledger, id);
    if (status === "open") return { next: id, free };
    if (finish !== null && (free === null || finish > free)) free = finish;
  }
  return { next: null, free };
}

/** The status of a lane after a command, and after it is found that nothing is left to do. */
function told(status: LaneStatus, command: LaneCommand, next: StepId | null): LaneStatus {
  const after = statusAfter(status, command);
  return next === null ? statusAfter(after, "finish") : after;
}

/** The lanes when the clock is started. */
export function lanesBegun(ledger: Ledger): readonly LaneProgress[] {
  return ledger.lanes.map(({ status }, lane) => {
    const found = followed(ledger, lane, null);
    return { ...found, status: told(status, "begin", found.next) };
  });
}

/** The ledger with lanes moved on over what has become complete. */
export function withLanesAdvanced(ledger: Ledger): Ledger {
  const lanes = ledger.lanes.map((progress, lane) => {
    if (progress.next === null) return progress;
    const found = followed(ledger, lane, progress.next);
    if (found.next === progress.next) return progress;
    return { ...found, status: statusAfter(progress.status, found.next === null ? "finish" : "advance") };
  });
  return { ...ledger, lanes };
}

/** The ledger with every lane followed anew from its beginning: after a step was reopened or a decision changed what is active. */
export function withLanesRewound(ledger: Ledger): Ledger {
  const lanes = ledger.lanes.map((progress, lane) => {
    const found = followed(ledger, lane, null);
    if (found.next === progress.next) return { ...progress, free: found.free };
    return { ...found, status: told(progress.status, "reopen", found.next) };
  });
  return { ...ledger, lanes };
}
