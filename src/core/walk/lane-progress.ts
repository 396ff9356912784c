import { bisectLeft } from "d3-array";
import type { StepId } from "../units/index.ts";
import type { LaneCommand, LaneStatus } from "./lane-machine.ts";
import { statusAfter } from "./lane-machine.ts";
import type { LaneProgress, Ledger } from "./ledger.ts";
import { isComplete, progressOf } from "./ledger.ts";

/** What tells how far lanes have come. */
type Progress = Pick<Ledger, "inForce" | "network" | "lanes" | "steps">;

/** Follows a lane over its complete steps, from its step `from` on (from its first step when that is `null`). */
function followed(ledger: Progress, lane: number, from: StepId | null): Pick<LaneProgress, "next" | "free"> {
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

/** The lanes moved on over what has become complete in a table of steps. */
export function lanesAdvanced(ledger: Ledger, steps: Ledger["steps"]): Ledger["lanes"] {
  const { inForce, network, lanes: before } = ledger;
  let lanes: LaneProgress[] | null = null;
  for (const [lane, { next, status }] of before.entries()) {
    if (next === null || !isComplete({ steps }, next)) continue;
    const found = followed({ inForce, network, lanes: before, steps }, lane, next);
    lanes ??= [...before];
    lanes[lane] = { ...found, status: statusAfter(status, found.next === null ? "finish" : "advance") };
  }
  return lanes ?? before;
}

/** The lanes followed anew from their beginning: after a step was reopened, or a decision changed what is active. */
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
