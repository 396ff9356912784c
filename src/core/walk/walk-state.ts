import type { ClosedGate, Course, HoldUp } from "../course/index.ts";
import { holdUpsOf } from "../course/index.ts";
import { isPlaced } from "../place/index.ts";
import type { Plan } from "../plan/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, Duration, Instant, PlaceId, StepId } from "../units/index.ts";
import { between, minus } from "../units/index.ts";
import { basePlanOf } from "./base-plan.ts";
import { forecastOf } from "./forecast.ts";
import { earliestStart, LedgerSituation, readyAt, startOf, stepOfLane } from "./gate.ts";
import type { LaneStatus } from "./lane-machine.ts";
import { statusAfter } from "./lane-machine.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";
import { inWork, petAt } from "./walk-course.ts";
import type { WalkPhase } from "./walk-machine.ts";

/** One crew member's lane at an instant. */
export interface LaneState {
  readonly crew: CrewId;
  readonly status: LaneStatus;
  /** The step in work or next; `null` when there is none left. */
  readonly step: StepId | null;
  /** Since when it has been working on that step or waiting for it, in PET; `null` while ready or finished. */
  readonly since: Duration | null;
  /** When it can probably start the step it waits for, in PET; `null` when not waiting or not known. */
  readonly expected: Duration | null;
  /** Steps complete, done or skipped. */
  readonly done: number;
  /** Steps of the lane as decisions stand, get-aheads included. */
  readonly of: number;
  /** What keeps it waiting ([WLK3]); itself is named only for a decision that is its own to take. Empty unless it waits. */
  readonly waitingOn: readonly HoldUp[];
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
  /** The plan of record. */
  readonly plan: Plan;
  /** `null` in a deadlock, or when a step to come fits no window any more. */
  readonly forecast: Course | null;
}

/** The state of a walk at an instant: what the ledger says, with the time that has passed since. */
export function walkStateAt(ledger: Ledger, instant: Instant): WalkState {
  const at = ledger.closed && ledger.closed.at < instant ? ledger.closed.at : instant;
  const moment: Moment = {
    ledger,
    at,
    plan: basePlanOf(ledger),
    forecast: forecastOf(ledger, at),
    working: inWork(ledger, at),
  };
  return {
    ledger,
    phase: ledger.phase,
    pet: ledger.petZero === null ? null : between(ledger.petZero, at),
    lanes: ledger.lanes.map((_, lane) => laneState(moment, lane)),
    plan: moment.plan,
    forecast: moment.forecast,
  };
}

interface Moment {
  readonly ledger: Ledger;
  readonly at: Instant;
  readonly plan: Plan;
  readonly forecast: Course | null;
  readonly working: ReadonlyMap<StepId, Instant>;
}

function laneState(moment: Moment, lane: number): LaneState {
  const { ledger, forecast, working, at } = moment;
  const { outline } = ledger.inForce;
  const steps = (ledger.network.lanes[lane] ?? []).flatMap((index) => outline.steps[index] ?? []);
  const progress = ledger.lanes[lane];
  const entry = stepOfLane(ledger, lane);
  const status = statusAt(ledger, lane, entry, at);
  const petZero = ledger.petZero;
  const inPet = (instant: Instant | null | undefined) =>
    instant == null || petZero === null ? null : between(petZero, instant);
  const waitsFor = status === "waiting" ? entry : null;
  return {
    crew: outline.crew[lane]?.id ?? ("" as CrewId),
    status,
    step: entry?.step.id ?? null,
    since:
      status === "working"
        ? inPet(entry && working.get(entry.step.id))
        : waitsFor === null
          ? null
          : inPet(progress?.free ?? petZero),
    expected: waitsFor === null ? null : (forecast?.steps.get(waitsFor.step.id)?.start ?? null),
    done: steps.filter(({ step }) => isComplete(ledger, step.id)).length,
    of: steps.length,
    waitingOn: waitsFor === null ? [] : waitingOn(moment, waitsFor, lane),
    behind: behindOf(steps, entry, moment),
    place: placeOf(ledger, steps, lane, entry),
  };
}

/** A lane that waits works as soon as its next step can have started ([WLK2]). */
function statusAt(ledger: Ledger, lane: number, entry: OutlineStep | null, at: Instant): LaneStatus {
  const status = ledger.lanes[lane]?.status ?? "ready";
  if (status !== "waiting" || entry === null) return status;
  const start = startOf(ledger, entry);
  return start !== null && start.hold === null && start.at <= at ? statusAfter(status, "work") : status;
}

function waitingOn({ ledger, at, forecast }: Moment, entry: OutlineStep, lane: number): readonly HoldUp[] {
  const holdUps = holdUpsOf(new ExpectedSituation(ledger, at, forecast), entry.index, petAt(ledger, at));
  const self = ledger.inForce.outline.crew[lane]?.id;
  const others = holdUps.filter(
    (one, place) =>
      one.kind !== "crew" || (one.crew !== self && place === firstOf(holdUps, one.crew, one.step)),
  );
  // Only the lane's own decision may hold it up by itself: then it is that which is said.
  return others.some(({ kind }) => kind === "crew") ? others : holdUps;
}

/** The place of the first hold-up by a crew member and a step: whoever holds a step up in two ways is named once. */
function firstOf(holdUps: readonly HoldUp[], crew: CrewId, step: StepId): number {
  return holdUps.findIndex((one) => one.kind === "crew" && one.crew === crew && one.step === step);
}

/** The ledger's situation at an instant, with what the forecast expects of open steps. */
class ExpectedSituation extends LedgerSituation {
  readonly #at: Instant;
  readonly #forecast: Course | null;

  constructor(ledger: Ledger, at: Instant, forecast: Course | null) {
    super(ledger);
    this.#at = at;
    this.#forecast = forecast;
  }

  override finishOf(step: number): Duration | null {
    const id = this.network.outline.steps[step]?.step.id as StepId;
    return super.finishOf(step) ?? this.#forecast?.steps.get(id)?.finish ?? null;
  }

  /** The hold in force or the window that is closed once everything before a step lets it; `null` when neither is. */
  override closedGate(step: number): ClosedGate | null {
    const entry = this.network.outline.steps[step];
    const start = entry ? earliestStart(this.ledger, entry, readyAt(this.ledger, entry)) : null;
    const pet = (instant: Instant) => between(this.ledger.petZero ?? this.ledger.opened.at, instant);
    if (start?.hold) return { kind: "hold", since: pet(start.hold.from), until: null };
    if (!start?.window || start.at <= this.#at) return null;
    return { kind: "window", window: start.window, until: pet(start.at) };
  }
}

/** Of the steps from the lane's current one on, the first that plan and forecast both have; of a finished lane the last. */
function behindOf(
  steps: readonly OutlineStep[],
  current: OutlineStep | null,
  { plan, forecast }: Moment,
): Duration | null {
  const candidates =
    current === null ? steps.toReversed() : steps.filter(({ index }) => index >= current.index);
  for (const { step } of candidates) {
    const planned = plan.timeline?.course.steps.get(step.id);
    const expected = forecast?.steps.get(step.id);
    if (planned && expected) return minus(expected.finish, planned.finish);
  }
  return null;
}

function placeOf(
  ledger: Ledger,
  steps: readonly OutlineStep[],
  lane: number,
  entry: OutlineStep | null,
): PlaceId | null {
  const member = ledger.inForce.outline.crew[lane];
  if (!member || !isPlaced(member)) return null;
  if (entry) {
    return ledger.whereabouts.from[entry.index]?.[entry.performers.indexOf(lane)] ?? member.start ?? null;
  }
  const last = steps.findLast(({ step }) => step.to !== undefined || step.at !== undefined)?.step;
  return last?.to ?? last?.at ?? member.start ?? null;
}
