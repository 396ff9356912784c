import type { Duration } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import { outOfRangeText } from "./record-limits.ts";

/**
 * Returns an alert for each record whose latest value is outside its limits. It asks to act now when the step carries
 * a warning, and to look soon otherwise. Each further value outside is an alert of its own.
 */
export function recordAlerts(ledger: Ledger, pet: Duration): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  const petZero = ledger.petZero ?? ledger.opened.at;
  return outline.steps.flatMap(({ index, step }): RaisedAlert[] => {
    if (step.records.length === 0 || !ledger.network.activity.active[index]) return [];
    const { records } = progressOf(ledger, step.id);
    return step.records.flatMap((record): RaisedAlert[] => {
      const taken = records.filter((one) => one.record === record.id);
      const last = taken.at(-1);
      const text = last?.outOfRange ? outOfRangeText(record, last.value) : null;
      if (!last || text === null) return [];
      const since = between(petZero, last.at);
      return [
        {
          alert: alertKey("record", step.id, record.id, taken.length),
          level: step.alerts.some(({ level }) => level === "warning") ? "act-now" : "look-soon",
          about: step.id,
          crew: step.by,
          step: step.id,
          since: since < pet ? since : pet,
          text,
        },
      ];
    });
  });
}
