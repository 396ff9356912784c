import type { Entry, Fact } from "../log/index.ts";
import type { Applied } from "./applied.ts";
import { applied } from "./applied.ts";
import type { Ledger } from "./ledger.ts";

type FactNamed<Name extends Fact["name"]> = Extract<Fact, { name: Name }>;

/**
 * `alert.raised`: stores that an alert was raised. Several devices may see and enter the same one: the first entry of
 * an alert and level counts, and the others change nothing and are no mistake.
 */
export function alertRaised(ledger: Ledger, entry: Entry, fact: FactNamed<"alert.raised">): Applied {
  const { alerts } = ledger;
  const { alert, level, about = null } = fact;
  if (alerts.raised.some((one) => one.alert === alert && one.level === level)) return applied(ledger);
  const raised = [...alerts.raised, { at: entry.at, alert, level, about }];
  return applied({ ...ledger, alerts: { ...alerts, raised } });
}

/**
 * `alert.seen`: stores who has seen an alert. An entry without a level means the level at which the alert was raised
 * last, or the most urgent one when no entry tells.
 */
export function alertSeen(ledger: Ledger, entry: Entry, fact: FactNamed<"alert.seen">): Applied {
  const { alerts } = ledger;
  const last = alerts.raised.findLast(({ alert }) => alert === fact.alert);
  const level = fact.level ?? last?.level ?? "act-now";
  const one = { at: entry.at, alert: fact.alert, level, actor: entry.wire.actor ?? null };
  return applied({ ...ledger, alerts: { ...alerts, seen: [...alerts.seen, one] } });
}
