import { message } from "../../words/index.ts";
import { impossibleReading } from "../supply/index.ts";
import type { Duration } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import type { Ledger } from "./ledger.ts";
import { gaugeReadings } from "./supply-readings.ts";

/**
 * Returns an alert for each supply whose latest reading cannot be true and so does not count ([OFF7]). Each such reading
 * is an alert of its own.
 */
export function readingAlerts(ledger: Ledger, pet: Duration): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  const petZero = ledger.petZero ?? ledger.opened.at;
  return outline.procedure.supplies.flatMap((supply): RaisedAlert[] => {
    const readings = gaugeReadings(ledger, supply);
    const last = readings.at(-1);
    const why = last && impossibleReading(supply, last.value);
    if (!last || !why) return [];
    const about = `${supply.crew} ${supply.id}`;
    const since = Math.max(0, between(petZero, last.at)) as Duration;
    return [
      {
        alert: alertKey("reading", about, readings.length),
        level: "look-soon",
        about,
        crew: [supply.crew],
        step: null,
        since: since < pet ? since : pet,
        text: message("alert/impossible-reading", {
          crew: outline.crewMember(supply.crew)?.call ?? supply.crew,
          supply: supply.label ?? supply.id,
          why,
        }),
      },
    ];
  });
}
