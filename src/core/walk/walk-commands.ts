import type { FactName } from "../log/index.ts";
import type { WalkCommand, WalkPhase } from "./walk-machine.ts";
import { phaseAfter } from "./walk-machine.ts";

/** What each fact asks of the walk; `null` for what has nothing to do with its phase. */
const COMMANDS: Readonly<Record<FactName, WalkCommand | null>> = {
  "walk.opened": "open",
  "clock.started": "start",
  "hold.called": "hold",
  "hold.lifted": "lift",
  "walk.closed": "close",
  "step.started": "mark",
  "step.done": "mark",
  "step.skipped": "mark",
  "step.reopened": "mark",
  "record.taken": "mark",
  "confirm.given": "mark",
  "decision.taken": "mark",
  "watch.kept": "mark",
  "item.moved": "report",
  "supply.read": "report",
  "note.made": "note",
  // Which clock its source goes by is looked up before the entries are folded, and so is what is struck.
  "clock.compared": null,
  "entry.struck": null,
};

/** What a fact asks of the walk; `null` for one that has nothing to do with its phase. */
export function commandOf(name: FactName): WalkCommand | null {
  return COMMANDS[name];
}

/** The phase of a walk after facts in their order, none of them struck; what a phase refuses changes nothing ([WLK1]). */
export function phaseAfterFacts(names: readonly FactName[]): WalkPhase {
  return names.reduce<WalkPhase>((phase, name) => {
    const command = commandOf(name);
    return (command === null ? null : phaseAfter(phase, command)) ?? phase;
  }, "prepared");
}
