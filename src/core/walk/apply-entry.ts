import type { Entry, Fact } from "../log/index.ts";
import type { Applied } from "./applied.ts";
import { applied, ignored } from "./applied.ts";
import { withStatuses } from "./lane-progress.ts";
import type { Ledger } from "./ledger.ts";
import { openWalk } from "./open-walk.ts";
import { confirmGiven, recordTaken, stepDone, stepReopened, stepSkipped, stepStarted } from "./step-facts.ts";
import {
  clockStarted,
  decisionTaken,
  holdCalled,
  holdLifted,
  itemMoved,
  noteMade,
  supplyRead,
  walkClosed,
} from "./walk-facts.ts";

/** Facts that make sense before the clock is started, and notes even after the walk is closed. */
const BEFORE_START: ReadonlySet<Fact["name"]> = new Set([
  "clock.started",
  "walk.closed",
  "note.made",
  "item.moved",
  "supply.read",
]);

function take(ledger: Ledger, entry: Entry, fact: Fact): Applied {
  // Which clock its source goes by is looked up before the entries are folded.
  if (fact.name === "clock.compared") return applied(ledger);
  if (ledger.phase === "closed" && fact.name !== "note.made") return ignored("the walk is closed");
  if (ledger.phase === "prepared" && !BEFORE_START.has(fact.name))
    return ignored("the clock has not been started");
  switch (fact.name) {
    case "walk.opened":
      return ignored("the walk is already open");
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
    case "decision.taken":
      return decisionTaken(ledger, entry, fact);
    case "item.moved":
      return itemMoved(ledger, entry, fact);
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
    case "entry.struck":
      return ignored("a strike is taken account of before the entries are folded");
  }
}

/**
 * The ledger after an entry, or why the entry had no effect ([LOG4]). `ledger` is `null` before the walk was opened.
 * Strikes are not handled here: the fold leaves struck entries out.
 */
export function applyEntry(ledger: Ledger | null, entry: Entry): Applied {
  const { fact, problem } = entry.read;
  if (!fact) return ignored(problem);
  if (!ledger)
    return fact.name === "walk.opened" ? openWalk(entry, fact) : ignored("the walk has not been opened");
  if (entry.walk !== ledger.opened.walk) return ignored(`it belongs to another walk, "${entry.walk}"`);
  const result = take(ledger, entry, fact);
  return result.ledger ? { ledger: withStatuses(result.ledger, entry.at), ignored: result.ignored } : result;
}
