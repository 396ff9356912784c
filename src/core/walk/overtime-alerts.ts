import { message } from "../../words/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { between, later } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import { inWork } from "./walk-course.ts";

/** A step whose high time is shorter than this, in ms, is measured against this: nobody marks to the second. */
const SHORTEST = 60_000;

/**
 * Returns an alert for each step that has been in work for longer than its high time, without the time of holds. It is
 * raised anew each time the time in work has doubled.
 */
export function overtimeAlerts(ledger: Ledger, pet: Duration): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  const petZero = ledger.petZero ?? ledger.opened.at;
  const now = later(petZero, pet);
  return [...inWork(ledger, now)].flatMap(([id, start]): RaisedAlert[] => {
    const entry = outline.step(id);
    const high = entry ? ledger.whereabouts.times[entry.index]?.high : undefined;
    if (!entry || high === undefined) return [];
    // A get-ahead is only taken to be in work. Whoever has not said so may have left it alone.
    if (entry.getAhead && progressOf(ledger, id).saidStart === null) return [];
    const worked = workedSince(ledger, start, now);
    const allowed = Math.max(high, SHORTEST);
    if (worked <= allowed) return [];
    const doubled = Math.floor(Math.log2(worked / allowed));
    const since = Math.max(0, pet - (worked - allowed * 2 ** doubled)) as Duration;
    return [
      {
        alert: alertKey("overtime", id, doubled + 1),
        level: "look-soon",
        about: id,
        crew: entry.step.by,
        step: id,
        since,
        text: message("alert/overtime", {
          crew: entry.performers.map((lane) => outline.crew[lane]?.call ?? ""),
          step: entry.step.do,
          time: worked,
          high,
        }),
      },
    ];
  });
}

/** Returns the time from `start` to `now` without the holds in between. */
function workedSince({ holds }: Ledger, start: Instant, now: Instant): Duration {
  let held = 0;
  for (const { from, until } of holds) {
    held += Math.max(0, Math.min(until ?? now, now) - Math.max(from, start));
  }
  return (between(start, now) - held) as Duration;
}
