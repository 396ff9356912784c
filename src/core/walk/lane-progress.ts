import type { Instant } from "../units/index.ts";
import { startOf, stepOfLane } from "./gate.ts";
import type { LaneProgress, Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";
import type { LaneCommand } from "./machines.ts";
import { nextStatus } from "./machines.ts";

/** Follows a lane from a position on over its complete steps. */
function advanced(ledger: Ledger, lane: number, from: LaneProgress): LaneProgress {
  const indices = ledger.network.lanes[lane] ?? [];
  let { next, free } = from;
  for (let index = indices[next]; index !== undefined && isComplete(ledger, index); index = indices[next]) {
    const finish = ledger.steps[index]?.finish ?? null;
    if (finish !== null && (free === null || finish > free)) free = finish;
    next += 1;
  }
  return next === from.next ? from : { ...from, next, free };
}

/** The command that a lane's situation at an instant amounts to. */
function commandFor(ledger: Ledger, lane: number, at: Instant): LaneCommand {
  const index = stepOfLane(ledger, lane);
  if (index === null) return "finish";
  const opening = startOf(ledger, index);
  return opening !== null && !opening.held && opening.at <= at ? "work" : "wait";
}

/** The ledger with each lane's status as it is at an instant. Before the clock is started lanes stay ready. */
export function withStatuses(ledger: Ledger, at: Instant): Ledger {
  if (ledger.phase === "prepared") return ledger;
  let changed = false;
  const lanes = ledger.lanes.map((progress, lane) => {
    const status = nextStatus(progress.status, commandFor(ledger, lane, at));
    if (status === progress.status) return progress;
    changed = true;
    return { ...progress, status };
  });
  return changed ? { ...ledger, lanes } : ledger;
}

/** The ledger with lanes moved on over what has become complete. */
export function withLanesAdvanced(ledger: Ledger): Ledger {
  return { ...ledger, lanes: ledger.lanes.map((progress, lane) => advanced(ledger, lane, progress)) };
}

/** The ledger with every lane followed anew from its beginning: after a step was reopened or a decision changed what is active. */
export function withLanesRewound(ledger: Ledger): Ledger {
  return {
    ...ledger,
    lanes: ledger.lanes.map((progress, lane) => advanced(ledger, lane, { ...progress, next: 0, free: null })),
  };
}
