import { message } from "../../words/index.ts";
import { marginOf } from "../course/index.ts";
import type { CrewId, Duration } from "../units/index.ts";
import { minus, NO_TIME } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import { outsideOf } from "./outside-crew.ts";
import type { TurnBackState } from "./turn-back-state.ts";
import type { WalkState } from "./walk-state.ts";

const MINUTE = 60_000;

/** How long before the turn-back time it is announced, in ms. */
const TURN_BACK_NEAR = 15 * MINUTE;

/** How long before a redline it is announced, in ms. */
const REDLINE_NEAR = 30 * MINUTE;

/** A forecast margin below this is told, in ms. */
const MARGIN_SMALL = 15 * MINUTE;

const WHOLE_WALK = { about: null, crew: [] as readonly CrewId[], step: null };

/**
 * Returns the alerts about getting back and finishing in time: the turn-back time that has passed or is near, a crew
 * member outside without a known way back, and a rest that no longer fits the limit or its windows, or barely does.
 */
export function returnAlerts(
  state: WalkState,
  { turnBack, returnPlan, bar }: TurnBackState,
  pet: Duration,
): readonly RaisedAlert[] {
  const found: RaisedAlert[] = [];
  if (turnBack && turnBack.at <= pet) {
    const text = message("alert/turn-back-passed", { at: turnBack.at, ago: minus(pet, turnBack.at) });
    const since = (turnBack.at > 0 ? turnBack.at : 0) as Duration;
    found.push({ ...WHOLE_WALK, alert: "turn-back", level: "act-now", since, text });
  } else if (turnBack && turnBack.at - pet <= TURN_BACK_NEAR) {
    const text = message("alert/turn-back-near", { at: turnBack.at, time: minus(turnBack.at, pet) });
    const since = Math.max(0, turnBack.at - TURN_BACK_NEAR) as Duration;
    found.push({ ...WHOLE_WALK, alert: "turn-back", level: "look-soon", since, text });
  }
  const { ledger } = state;
  const hasRefuge = ledger.inForce.outline.procedure.places.some(({ refuge }) => refuge);
  const outside = returnPlan === null && hasRefuge ? outsideOf(ledger) : [];
  if (outside.length > 0) {
    const crew = outside.map(({ crew: id }) => ledger.inForce.outline.crewMember(id)?.call ?? id);
    found.push({
      ...WHOLE_WALK,
      alert: "return",
      level: "act-now",
      crew: outside.map((one) => one.crew),
      since: firstRaised(ledger, "return", "act-now") ?? pet,
      text: bar
        ? message("alert/return-barred", { crew, why: bar.why })
        : message("alert/no-return", { crew }),
    });
  }
  return [...found, ...finishAlerts(state, pet)];
}

function finishAlerts({ forecast, ledger }: WalkState, pet: Duration): readonly RaisedAlert[] {
  const since = (level: RaisedAlert["level"], alert: string): Duration =>
    firstRaised(ledger, alert, level) ?? pet;
  if (forecast === null) {
    const text = message("alert/no-forecast");
    return [
      { ...WHOLE_WALK, alert: "forecast", level: "look-soon", since: since("look-soon", "forecast"), text },
    ];
  }
  const margin = marginOf(forecast);
  if (margin === null || margin >= MARGIN_SMALL) return [];
  const level = margin < 0 ? "look-soon" : "know";
  const text =
    margin < 0
      ? message("alert/over-limit", { over: minus(NO_TIME, margin) })
      : message("alert/margin-small", { margin });
  return [{ ...WHOLE_WALK, alert: "limit", level, since: since(level, "limit"), text }];
}

/** Returns the PET at which the log says that an alert was first raised at a level; `null` when it does not. */
function firstRaised(
  { alerts, petZero, opened }: WalkState["ledger"],
  alert: string,
  level: RaisedAlert["level"],
): Duration | null {
  const one = alerts.raised.find((raised) => raised.alert === alert && raised.level === level);
  return one ? (Math.max(0, one.at - (petZero ?? opened.at)) as Duration) : null;
}

/**
 * Returns an alert for each supply that is at its redline or will be soon, by its forecast, while its owner has steps
 * left.
 */
export function supplyAlerts(
  { ledger, lanes }: WalkState,
  { supplies }: TurnBackState,
  pet: Duration,
): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  return supplies.flatMap(({ supply, forecast: { redlineAt } }): RaisedAlert[] => {
    const lane = lanes[outline.lane(supply.crew)];
    if (redlineAt === null || redlineAt - pet > REDLINE_NEAR || !lane || lane.status === "finished")
      return [];
    const names = {
      crew: outline.crewMember(supply.crew)?.call ?? supply.crew,
      supply: supply.label ?? supply.id,
    };
    const about = `${supply.crew} ${supply.id}`;
    const more = { alert: alertKey("supply", about), about, crew: [supply.crew], step: null };
    if (redlineAt <= pet) {
      const since = (redlineAt > 0 ? redlineAt : 0) as Duration;
      return [
        { ...more, level: "act-now", since, text: message("alert/redline", { ...names, at: redlineAt }) },
      ];
    }
    const since = Math.max(0, redlineAt - REDLINE_NEAR) as Duration;
    const text = message("alert/redline-near", { ...names, at: redlineAt, time: minus(redlineAt, pet) });
    return [{ ...more, level: "look-soon", since, text }];
  });
}
