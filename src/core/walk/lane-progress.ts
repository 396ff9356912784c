import { bisectLeft } from "d3-array";
import type { StepId } from "../units/index.ts";
import type { LaneCommand, LaneStatus } from "./lane-machine.ts";
import { statusAfter } from "./lane-machine.ts";
import type { LaneProgress, Ledger } from "./ledger.ts";
import { isComplete, progressOf } from "./ledger.ts";

/** The parts of a ledger that determine the progress of its lanes. */
type Progress = Pick<Ledger, "inForce" | "network" | "lanes" | "steps">;

/**
 * Moves a lane over its complete steps, beginning at the step `from` (at its first step when `from` is `null`).
 * Returns its first open step and when the lane became free for it.
 */
function followed(ledger: Progress, lane: number, from: StepId | null): Pick<LaneProgress, "next" | "free"> {
  const { outline } = ledger.inForce;
  const indices = ledger.network.lanes[lane] ?? [];
  // The steps of a lane are in reading order, which allows a binary search.
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

/** Returns the status of a lane after a command. The lane also finishes when it has no next step. */
function told(status: LaneStatus, command: LaneCommand, next: StepId | null): LaneStatus {
  const after = statusAfter(status, command);
  return next === null ? statusAfter(after, "finish") : after;
}

/** Returns the lanes as they are when the clock is started. */
export function lanesBegun(ledger: Ledger): readonly LaneProgress[] {
  return ledger.lanes.map(({ status }, lane) => {
    const found = followed(ledger, lane, null);
    return { ...found, status: told(status, "begin", found.next) };
  });
}

/** Returns the lanes moved past the steps that are complete in the given table. */
export function lanesAdvanced(ledger: Ledger, steps: Ledger["steps"]): Ledger["lanes"] {
  const { inForce, network, lanes: before } = ledger;
  let lanes: LaneProgress[] | null = null;
  for (const [lane, { next, status }] of before.entries()) {
    if (next === null || !isComplete({ steps }, next)) continue;
    const found = followed({ inForce, network, lanes: before, steps }, lane, next);
    lanes ??= [...before];
    const after = statusAfter(status, found.next === null ? "finish" : "advance");
    lanes[lane] = { next: found.next, free: found.free, status: after };
  }
  return lanes ?? before;
}

/**
 * Returns the lanes worked out again from their first step, after a step was reopened or a decision changed which
 * steps are active.
 */
export function lanesRewound(
  { inForce, network, lanes }: Omit<Progress, "steps">,
  steps: Ledger["steps"],
): Ledger["lanes"] {
  const ledger = { inForce, network, lanes, steps };
  return lanes.map((progress, lane) => {
    const found = followed(ledger, lane, null);
    if (found.next === progress.next) {
      return found.free === progress.free ? progress : { ...progress, free: found.free };
    }
    return { ...found, status: told(progress.status, "reopen", found.next) };
  });
}
