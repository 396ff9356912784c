import type { Draft } from "../log/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import type { AlertLog, RaisedAlert, WalkAlert } from "./alert.ts";
import { ALERT_LEVELS, isAsUrgent } from "./alert.ts";
import { decisionAlerts } from "./decision-alerts.ts";
import { itemAlerts } from "./item-alerts.ts";
import { overtimeAlerts } from "./overtime-alerts.ts";
import { holdAlerts, watchAlerts } from "./pace-alerts.ts";
import { readingAlerts } from "./reading-alerts.ts";
import { recordAlerts } from "./record-alerts.ts";
import { returnAlerts, supplyAlerts } from "./return-alerts.ts";
import type { TurnBackState } from "./turn-back-state.ts";
import { turnBackState } from "./turn-back-state.ts";
import type { WalkState } from "./walk-state.ts";
import { wayAlerts } from "./way-alerts.ts";

/**
 * Returns every alert that holds in a walk at the instant of its state, the most urgent first, and those of one level
 * with the latest first ([OFF3]). A walk that is not running or held has none. `limits` is the turn-back state of the
 * same state, for a caller who has it at hand.
 */
export function alertsOf(
  state: WalkState,
  limits: TurnBackState = turnBackState(state),
): readonly WalkAlert[] {
  const { pet, phase, ledger } = state;
  if (pet === null || (phase !== "running" && phase !== "held")) return [];
  return [
    ...returnAlerts(state, limits, pet),
    ...supplyAlerts(state, limits, pet),
    ...readingAlerts(ledger, pet),
    ...recordAlerts(ledger, pet),
    ...watchAlerts(ledger, pet),
    ...holdAlerts(ledger),
    ...decisionAlerts(ledger),
    ...itemAlerts(ledger),
    ...wayAlerts(state),
    ...overtimeAlerts(ledger, pet),
  ]
    .map((alert) => withSeen(ledger.alerts, alert, pet))
    .sort(
      (a, b) =>
        ALERT_LEVELS.indexOf(a.level) - ALERT_LEVELS.indexOf(b.level) ||
        b.since - a.since ||
        (a.alert < b.alert ? -1 : 1),
    );
}

function withSeen({ seen }: AlertLog, alert: RaisedAlert, pet: Duration): WalkAlert {
  const since = Math.min(alert.since, pet) as Duration;
  const by = seen.findLast((one) => one.alert === alert.alert && isAsUrgent(one.level, alert.level));
  return { ...alert, since, seen: by ? { at: by.at, actor: by.actor } : null };
}

/**
 * Returns the entries by which a device logs the alerts that hold and that no entry tells yet. What the log says of
 * alerts is never the reason for one, so that entries of several devices do not answer each other.
 */
export function alertDrafts(
  { alerts: { raised } }: { readonly alerts: AlertLog },
  alerts: readonly RaisedAlert[],
  at: Instant,
  actor: string,
): readonly Draft[] {
  return alerts
    .filter(({ alert, level }) => !raised.some((one) => one.alert === alert && one.level === level))
    .map(({ alert, level, about }) => ({
      name: "alert.raised",
      data: about === null ? { alert, level } : { alert, level, about },
      at,
      actor,
    }));
}
