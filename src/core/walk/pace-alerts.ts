import { message } from "../../words/index.ts";
import type { Duration } from "../units/index.ts";
import { between, inSeconds, plus } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import type { Ledger } from "./ledger.ts";
import { watchRounds } from "./watch-state.ts";

/** The share of its period that a watch may be overdue before it asks to act now. */
const OVERDUE_SHARE = 0.25;

/** Returns an alert for the last round of each watch that is due and was not kept. Each round is an alert of its own. */
export function watchAlerts(ledger: Ledger, pet: Duration): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  return watchRounds(ledger, pet).flatMap(({ watch, isOver, rounds }): RaisedAlert[] => {
    const last = rounds.at(-1);
    if (!last || isOver || last.isKept) return [];
    const late = plus(last.due, Math.round(watch.every * OVERDUE_SHARE) as Duration);
    const isLate = pet >= late;
    const crew = watch.by.map((id) => outline.crewMember(id)?.call ?? id);
    return [
      {
        alert: alertKey("watch", watch.id, inSeconds(last.due)),
        level: isLate ? "act-now" : "look-soon",
        about: watch.id,
        crew: watch.by,
        step: null,
        since: isLate ? late : last.due,
        text: message("alert/watch-due", { crew, watch: watch.do, due: last.due }),
      },
    ];
  });
}

/** Returns an alert for the hold in force, if there is one. */
export function holdAlerts({ holds, petZero, opened }: Ledger): readonly RaisedAlert[] {
  const hold = holds.at(-1);
  if (!hold || hold.until !== null) return [];
  const since = between(petZero ?? opened.at, hold.from);
  return [
    {
      alert: alertKey("hold", inSeconds(since)),
      level: "look-soon",
      about: null,
      crew: [],
      step: null,
      since,
      text: hold.reason
        ? message("alert/hold-because", { since, reason: hold.reason })
        : message("alert/hold", { since }),
    },
  ];
}
