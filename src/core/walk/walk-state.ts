import type { ClosedGate, Course, HoldUp } from "../course/index.ts";
import { holdUpsOf } from "../course/index.ts";
import { isPlaced } from "../place/index.ts";
import type { Plan } from "../plan/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, Duration, Instant, PlaceId, StepId } from "../units/index.ts";
import { between, minus, NO_TIME } from "../units/index.ts";
import { closedWindowAt } from "../window/index.ts";
import { basePlanOf, planInForce } from "./base-plan.ts";
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
  /** The step in work or the next one; `null` when no step is left. */
  readonly step: StepId | null;
  /** The PET since which it has worked on that step or waited for it; `null` while ready or finished. */
  readonly since: Duration | null;
  /**
   * The forecast PET at which the step it waits for can start; `null` when it does not wait or there is no forecast.
   */
  readonly expected: Duration | null;
  /** The number of steps of the lane that are done or skipped. */
  readonly done: number;
  /** The number of steps of the lane under the decisions so far, including get-aheads. */
  readonly of: number;
  /**
   * What it waits for ([WLK3]); empty when it does not wait. Its own crew member is listed only for a decision which
   * that person has to take.
   */
  readonly waitingOn: readonly HoldUp[];
  /**
   * Forecast finish − planned finish of the step in work or the next one; negative means ahead of the plan in force.
   * `null` when unknown.
   */
  readonly behind: Duration | null;
  /** Where the crew member is; `null` when the procedure does not say. */
  readonly place: PlaceId | null;
}

/** The state of a walk at an instant. */
export interface WalkState {
  readonly ledger: Ledger;
  readonly phase: WalkPhase;
  /** The PET; `null` before the clock was started. It stops when the walk is closed. */
  readonly pet: Duration | null;
  readonly lanes: readonly LaneState[];
  /** The plan of record. */
  readonly plan: Plan;
  /** The plan in force, against which lanes are behind ([AMD2]); `null` when there is none. */
  readonly inForce: Course | null;
  /** `null` when there is a deadlock, or when a remaining step does not fit any window. */
  readonly forecast: Course | null;
}

/**
 * Returns the state of a walk at an instant, which depends on the ledger and on the time that has passed since its
 * last entry.
 */
export function walkStateAt(ledger: Ledger, instant: Instant): WalkState {
  const at = ledger.closed && ledger.closed.at < instant ? ledger.closed.at : instant;
  const moment: Moment = {
    ledger,
    at,
    inForce: planInForce(ledger),
    forecast: forecastOf(ledger, at),
    working: inWork(ledger, at),
  };
  return {
    ledger,
    phase: ledger.phase,
    pet: ledger.petZero === null ? null : between(ledger.petZero, at),
    lanes: ledger.lanes.map((_, lane) => laneState(moment, lane)),
    plan: basePlanOf(ledger),
    inForce: moment.inForce,
    forecast: moment.forecast,
  };
}

interface Moment {
  readonly ledger: Ledger;
  readonly at: Instant;
  readonly inForce: Course | null;
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

/**
 * Returns the status of a lane at an instant. A waiting lane works as soon as its next step can have started
 * ([WLK2]).
 */
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
  // When no other crew member holds the lane up, report its own pending decision, if any.
  return others.some(({ kind }) => kind === "crew") ? others : holdUps;
}

/**
 * Returns the index of the first hold-up for a crew member and a step, so that somebody who holds a step up in two
 * ways is listed once.
 */
function firstOf(holdUps: readonly HoldUp[], crew: CrewId, step: StepId): number {
  return holdUps.findIndex((one) => one.kind === "crew" && one.crew === crew && one.step === step);
}

/** The situation of the ledger at an instant, with forecast finishes for the open steps. */
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

  /**
   * Returns the hold in force, the PET that has not come, or the closed window, that blocks a step after everything
   * before it allows it to start. Returns `null` when there is none of them.
   */
  override closedGate(step: number): ClosedGate | null {
    const entry = this.network.outline.steps[step];
    if (!entry) return null;
    const { ledger } = this;
    const ready = readyAt(ledger, entry);
    const start = earliestStart(ledger, entry, ready);
    const pet = (instant: Instant) => between(ledger.petZero ?? ledger.opened.at, instant);
    if (start?.hold) return { kind: "hold", since: pet(start.hold.from), until: null };
    const { notBefore } = entry.step;
    if (notBefore !== undefined && notBefore > pet(this.#at)) return { kind: "notBefore", until: notBefore };
    if (!start?.window || start.at <= this.#at) return null;
    const likely = ledger.whereabouts.times[entry.index]?.likely ?? NO_TIME;
    // One window after the other, from when everything else let the step start, as in the waits of a course.
    const lifted = ledger.holds.flatMap(({ until }) => (until !== null && until <= this.#at ? [until] : []));
    let from = pet(lifted.reduce((most, one) => (one > most ? one : most), ready));
    for (;;) {
      const closed = closedWindowAt(from, likely, entry.step.within, ledger.windows);
      if (!closed) return null;
      if (closed.until > pet(this.#at)) return { kind: "window", ...closed };
      from = closed.until;
    }
  }
}

/**
 * Returns forecast finish − planned finish for the first step, from the current step of the lane on, that both plan
 * and forecast contain. For a finished lane it uses the last such step. Returns `null` when there is none.
 */
function behindOf(
  steps: readonly OutlineStep[],
  current: OutlineStep | null,
  { inForce, forecast }: Moment,
): Duration | null {
  const candidates =
    current === null ? steps.toReversed() : steps.filter(({ index }) => index >= current.index);
  for (const { step } of candidates) {
    const planned = inForce?.steps.get(step.id);
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
