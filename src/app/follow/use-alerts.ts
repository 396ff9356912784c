import { useEffect, useMemo, useRef } from "react";
import type { WalkAlert, WalkState } from "../../core/walk/index.ts";
import { alertsOf, isShown } from "../../core/walk/index.ts";
import { signalAlert } from "../../io/device/index.ts";
import { nextFrame } from "../session/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import { signalChoice } from "./signal-choice.ts";

/**
 * How long a device that is not the lead's leaves it to the lead's to log an alert, in ms. Several entries of one alert
 * do no harm; they would only make the log longer.
 */
const LEFT_TO_THE_LEAD = 4000;

const nameOf = ({ alert, level }: WalkAlert) => `${alert} ${level}`;

/**
 * The alerts that hold at the instant of a state ([OFF3]). Each one sounds once on this device when it comes up and is
 * not seen yet, and is logged unless another device has done so. `actions` is `null` on a device that may not enter
 * anything.
 */
export function useAlerts(
  state: WalkState,
  actions: FollowActions | null,
  isLead: boolean,
): readonly WalkAlert[] {
  const alerts = useMemo(() => alertsOf(state), [state]);
  const sounded = useRef(new Set<string>());
  const latest = useRef({ state, alerts, actions });
  latest.current = { state, alerts, actions };
  const key = alerts.map(nameOf).join("\n");

  // biome-ignore lint/correctness/useExhaustiveDependencies: only another set of alerts sounds or is logged.
  useEffect(() => {
    const choice = signalChoice();
    const fresh = latest.current.alerts.filter(
      (alert) => isShown(alert) && alert.seen === null && !sounded.current.has(nameOf(alert)),
    );
    for (const alert of fresh) sounded.current.add(nameOf(alert));
    const loudest = fresh.find(({ level }) => choice[level]);
    // The picture comes first: to begin with sound may hold it up.
    if (loudest) void nextFrame().then(() => signalAlert(loudest.level));
    const log = () => {
      const { state: now, alerts: all, actions: may } = latest.current;
      void may?.raiseAlerts(now.ledger, all);
    };
    const timer = setTimeout(log, isLead ? 0 : LEFT_TO_THE_LEAD);
    return () => clearTimeout(timer);
  }, [key, isLead]);
  return alerts;
}
