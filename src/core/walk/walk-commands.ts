import type { FactName } from "../log/index.ts";
import type { WalkCommand, WalkPhase } from "./walk-machine.ts";
import { phaseAfter, REOPENINGS } from "./walk-machine.ts";

/** The walk command for each fact; `null` for facts that do not depend on the phase of the walk. */
const COMMANDS: Readonly<Record<FactName, WalkCommand | null>> = {
  "walk.opened": "open",
  "clock.started": "start",
  "hold.called": "hold",
  "hold.lifted": "lift",
  "walk.closed": "close",
  "walk.reopened": "reopen",
  "step.started": "mark",
  "step.done": "mark",
  "step.skipped": "mark",
  "step.reopened": "mark",
  "record.taken": "mark",
  "confirm.given": "mark",
  "check.counted": "mark",
  "decision.taken": "mark",
  "watch.kept": "mark",
  "item.moved": "report",
  "state.set": "report",
  "supply.read": "report",
  "note.made": "note",
  "alert.raised": "note",
  "alert.seen": "note",
  "plan.amended": "amend",
  "light.chosen": "amend",
  "amendment.seen": "note",
  "surprise.laid": "report",
  "surprise.fired": "report",
  // Clock comparisons, jumps of clocks and strikes are processed before the entries are folded.
  "clock.compared": null,
  "clock.jumped": null,
  "entry.struck": null,
  // What hubs write of themselves is no part of the walk.
  "hub.named": null,
  "device.admitted": null,
  "hub.vouched": null,
  "checkpoint.made": null,
  // Belongs in the log of a library.
  "revision.kept": null,
};

/** Returns the walk command for a fact, or `null` for a fact that does not depend on the phase of the walk. */
export function commandOf(name: FactName): WalkCommand | null {
  return COMMANDS[name];
}

/**
 * Returns the phase of a walk after the given facts in order, none of which is struck. A fact that the phase refuses
 * changes nothing ([WLK1]).
 */
export function phaseAfterFacts(names: readonly FactName[]): WalkPhase {
  let phase: WalkPhase = "prepared";
  let before: Exclude<WalkPhase, "closed"> = "prepared";
  for (const name of names) {
    const command = commandOf(name);
    if (command === null) continue;
    phase = phaseAfter(phase, command === "reopen" ? REOPENINGS[before] : command) ?? phase;
    if (phase !== "closed") before = phase;
  }
  return phase;
}
