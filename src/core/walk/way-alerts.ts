import type { CrewId, Duration } from "../units/index.ts";
import { between, NO_TIME } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import { statesGivenIn } from "./state-values.ts";
import type { WalkState } from "./walk-state.ts";

/**
 * Returns an alert for each crew member whose next closed way is closed by the states as they stand, with nothing that
 * is certain to open it before ([PRO13]).
 */
export function wayAlerts({ forecast, ledger }: WalkState): readonly RaisedAlert[] {
  if (!forecast) return [];
  const told = new Set<CrewId>();
  const given = statesGivenIn(ledger);
  return forecast.whereabouts.findings.flatMap(({ code, steps, things, message: text }): RaisedAlert[] => {
    const [step] = steps;
    const crew = ledger.inForce.outline.crew.find(({ id }) => things.includes(id))?.id;
    if (code !== "place/way-closed" || step === undefined || crew === undefined || told.has(crew)) return [];
    if (forecast.steps.get(step)?.stage !== "planned") return [];
    told.add(crew);
    const state = given.findLast((one) => things.includes(one.state));
    const since: Duration = state ? between(ledger.petZero ?? ledger.opened.at, state.at) : NO_TIME;
    return [
      { alert: alertKey("way", step), level: "look-soon", about: step, crew: [crew], step, since, text },
    ];
  });
}
