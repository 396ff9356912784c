import { isPlaced } from "../place/index.ts";
import type { Plan } from "../plan/index.ts";
import type { CrewId, Duration, Instant, PlaceId, StepId, WindowId } from "../units/index.ts";
import { between, minus } from "../units/index.ts";
import { basePlanOf } from "./base-plan.ts";
import type { Forecast } from "./forecast.ts";
import { forecastOf, inWork } from "./forecast.ts";
import type { Blocker } from "./gate.ts";
import { gateOf, openingOf, stepOfLane } from "./gate.ts";
import { withStatuses } from "./lane-progress.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";
import type { LaneStatus, WalkPhase } from "./machines.ts";

/** What a waiting lane waits on ([WLK3]); times in PET. */
export type WaitingOn =
  | Blocker
  | { readonly window: WindowId; readonly until: Duration }
  | { readonly lag: StepId; readonly until: Duration }
  | { readonly hold: true; readonly since: Duration };

/** One crew member's lane at an instant. */
export interface LaneState {
  readonly crew: CrewId;
  readonly status: LaneStatus;
  /** The step in work or next (reading order index); `null` when there is none left. */
  readonly step: number | null;
  /** Since when it has been working on that step or waiting for it, in PET; `null` while ready or finished. */
  readonly since: Duration | null;
  /** When it can probably start the step it waits for, in PET; `null` when not waiting or not known. */
  readonly expected: Duration | null;
  /** Steps complete, done or skipped. */
  readonly done: number;
  /** Steps of the lane as decisions stand, get-aheads included. */
  readonly of: number;
  readonly waitingOn: readonly WaitingOn[];
  /** Forecast finish of the step in work or next − its planned finish; below zero is ahead; `null` when it cannot be said. */
  readonly behind: Duration | null;
  /** Where the crew member is; `null` when the procedure does not say. */
  readonly place: PlaceId | null;
}

/** A walk at an instant. */
export interface WalkState {
  readonly ledger: Ledger;
  readonly phase: WalkPhase;
  /** `null` before the clock was started; stands still once the walk is closed. */
  readonly pet: Duration | null;
  readonly lanes: readonly LaneState[];
  readonly plan: Plan;
  readonly forecast: Forecast | null;
}

/** The state of a walk at an instant: what the ledger says, with the time that has passed since. */
export function walkStateAt(ledger: Ledger, instant: Instant): WalkState {
  const at = ledger.closed && ledger.closed.at < instant ? ledger.closed.at : instant;
  const now = withStatuses(ledger, at);
  const plan = basePlanOf(ledger);
  const forecast = forecastOf(now, at);
  const working = inWork(now, at);
  return {
    ledger: now,
    phase: now.phase,
    pet: now.petZero === null ? null : between(now.petZero, at),
    lanes: now.lanes.map((_, lane) => laneState(now, lane, at, plan, forecast, working)),
    plan,
    forecast,
  };
}

function laneState(
  ledger: Ledger,
  lane: number,
  at: Instant,
  plan: Plan,
  forecast: Forecast | null,
  working: ReadonlyMap<number, Instant>,
): LaneState {
  const { outline } = ledger.opened;
  const indices = ledger.network.lanes[lane] ?? [];
  const progress = ledger.lanes[lane];
  const status = progress?.status ?? "ready";
  const index = stepOfLane(ledger, lane);
  const petZero = ledger.petZero;
  const inPet = (instant: Instant | null | undefined) =>
    instant == null || petZero === null ? null : between(petZero, instant);
  const waitsFor = status === "waiting" ? index : null;
  return {
    crew: outline.crew[lane]?.id ?? ("" as CrewId),
    status,
    step: index,
    since:
      status === "working"
        ? inPet(working.get(index ?? -1))
        : waitsFor === null
          ? null
          : inPet(progress?.free ?? petZero),
    expected: waitsFor === null ? null : (forecast?.steps[waitsFor]?.start ?? null),
    done: indices.filter((step) => isComplete(ledger, step)).length,
    of: indices.length,
    waitingOn: waitsFor === null ? [] : waitingOn(ledger, waitsFor, lane, at),
    behind: behindOf(indices, progress?.next ?? 0, plan, forecast),
    place: placeOf(ledger, lane, index),
  };
}

/** What an open step that lane `lane` has come to waits on; on itself only for a decision that is its own to take. */
function waitingOn(ledger: Ledger, index: number, lane: number, at: Instant): WaitingOn[] {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const gate = gateOf(ledger, index);
  const self = ledger.opened.outline.crew[lane]?.id;
  const others = gate.blockers.filter(({ crew }) => crew !== self);
  // Only the lane's own decision may hold it up by itself: then it is that which is said.
  const waits: WaitingOn[] = others.length > 0 ? others : [...gate.blockers];
  for (const { step, until } of gate.lags)
    if (until > at) waits.push({ lag: step, until: between(petZero, until) });
  if (gate.ready === null) return waits;
  const opening = openingOf(ledger, index, gate.ready);
  if (opening?.held) {
    const hold = ledger.holds.find(({ until }) => until === null);
    if (hold) waits.push({ hold: true, since: between(petZero, hold.from) });
  } else if (opening?.window && opening.at > at) {
    waits.push({ window: opening.window, until: between(petZero, opening.at) });
  }
  return waits;
}

/** Of the steps from the lane's current one on, the first that plan and forecast both have; of a finished lane the last. */
function behindOf(
  indices: readonly number[],
  next: number,
  plan: Plan,
  forecast: Forecast | null,
): Duration | null {
  const candidates = next < indices.length ? indices.slice(next) : indices.toReversed();
  for (const index of candidates) {
    const planned = plan.timeline?.steps[index];
    const expected = forecast?.steps[index];
    if (planned && expected) return minus(expected.finish, planned.finish);
  }
  return null;
}

function placeOf(ledger: Ledger, lane: number, index: number | null): PlaceId | null {
  const { outline } = ledger.opened;
  const member = outline.crew[lane];
  if (!member || !isPlaced(member)) return null;
  if (index !== null) {
    const seat = outline.steps[index]?.performers.indexOf(lane) ?? -1;
    return ledger.whereabouts.from[index]?.[seat] ?? member.start ?? null;
  }
  const last = ledger.network.lanes[lane]?.toReversed().find((step) => {
    const at = outline.steps[step]?.step;
    return at?.to !== undefined || at?.at !== undefined;
  });
  const step = outline.steps[last ?? -1]?.step;
  return step?.to ?? step?.at ?? member.start ?? null;
}
