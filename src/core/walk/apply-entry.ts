import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { alertRaised, alertSeen } from "./alert-facts.ts";
import { amendmentSeen, planAmended } from "./amendment-facts.ts";
import type { Applied } from "./applied.ts";
import { applied, ignored } from "./applied.ts";
import type { Ledger } from "./ledger.ts";
import { lightChosen } from "./light-facts.ts";
import { openWalk } from "./open-walk.ts";
import { RefusedCommandError } from "./refused-command-error.ts";
import {
  checkCounted,
  confirmGiven,
  recordTaken,
  stepDone,
  stepReopened,
  stepSkipped,
  stepStarted,
} from "./step-facts.ts";
import { commandOf } from "./walk-commands.ts";
import {
  clockStarted,
  decisionTaken,
  holdCalled,
  holdLifted,
  itemMoved,
  noteMade,
  stateSet,
  supplyRead,
  surpriseEntered,
  walkClosed,
  walkReopened,
  watchKept,
} from "./walk-facts.ts";
import type { WalkCommand, WalkPhase } from "./walk-machine.ts";
import { walkMay } from "./walk-machine.ts";

/** Returns the reason why a walk in the given phase refuses a command. */
function whyNot(phase: WalkPhase, command: WalkCommand): Message {
  if (command === "reopen") return message("walk/not-closed");
  if (phase === "closed") return message("walk/is-closed");
  if (phase === "prepared") return message("walk/clock-not-started");
  if (command === "open") return message("walk/already-open");
  if (command === "start") return message("walk/clock-already-started");
  return message(command === "hold" ? "walk/not-running" : "walk/not-held");
}

function take(ledger: Ledger, entry: Entry, fact: Fact): Applied {
  const command = commandOf(fact.name);
  if (command !== null && !walkMay(ledger.phase, command)) return ignored(whyNot(ledger.phase, command));
  switch (fact.name) {
    case "light.chosen":
      return lightChosen(ledger, entry, fact);
    case "clock.started":
      return clockStarted(ledger, entry);
    case "step.started":
      return stepStarted(ledger, entry, fact);
    case "step.done":
      return stepDone(ledger, entry, fact);
    case "step.skipped":
      return stepSkipped(ledger, entry, fact);
    case "step.reopened":
      return stepReopened(ledger, entry, fact);
    case "record.taken":
      return recordTaken(ledger, entry, fact);
    case "confirm.given":
      return confirmGiven(ledger, entry, fact);
    case "check.counted":
      return checkCounted(ledger, fact);
    case "decision.taken":
      return decisionTaken(ledger, entry, fact);
    case "item.moved":
      return itemMoved(ledger, entry, fact);
    case "state.set":
      return stateSet(ledger, entry, fact);
    case "supply.read":
      return supplyRead(ledger, entry, fact);
    case "note.made":
      return noteMade(ledger, entry, fact);
    case "hold.called":
      return holdCalled(ledger, entry, fact);
    case "hold.lifted":
      return holdLifted(ledger, entry);
    case "walk.closed":
      return walkClosed(ledger, entry, fact);
    case "walk.reopened":
      return walkReopened(ledger, entry, fact);
    case "watch.kept":
      return watchKept(ledger, entry, fact);
    case "alert.raised":
      return alertRaised(ledger, entry, fact);
    case "alert.seen":
      return alertSeen(ledger, entry, fact);
    case "plan.amended":
      return planAmended(ledger, entry, fact);
    case "amendment.seen":
      return amendmentSeen(ledger, entry, fact);
    case "surprise.laid":
    case "surprise.fired":
      return surpriseEntered(ledger, entry, fact);
    case "revision.kept":
      return ignored(message("walk/of-a-library"));
    case "clock.compared":
    case "clock.jumped":
      return applied(ledger);
    case "walk.opened":
    case "entry.struck":
    case "hub.named":
    case "device.admitted":
    case "hub.vouched":
    case "checkpoint.made":
      throw new RefusedCommandError(`${fact.name} is taken account of before the entries are folded`);
  }
}

/**
 * Returns the ledger after an entry, or the reason why the entry had no effect ([LOG4]). `ledger` is `null` before
 * the walk was opened. Strikes are not handled here: the fold skips struck entries.
 */
export function applyEntry(ledger: Ledger | null, entry: Entry): Applied {
  const { fact, problem } = entry.read;
  if (!fact) return ignored(problem);
  if (!ledger)
    return fact.name === "walk.opened" ? openWalk(entry, fact) : ignored(message("walk/not-opened"));
  if (entry.walk !== ledger.opened.walk) return ignored(message("walk/other-walk", { walk: entry.walk }));
  return take(ledger, entry, fact);
}
