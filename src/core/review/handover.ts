import type { CourseStep } from "../course/index.ts";
import { lanesInTime, marginOf } from "../course/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later, NO_TIME, plus } from "../units/index.ts";
import type {
  Deviation,
  Folded,
  Hold,
  ItemMove,
  LaneState,
  Outstanding,
  SupplyState,
  TakenDecision,
  TurnBackState,
  WalkAlert,
  WalkState,
} from "../walk/index.ts";
import { alertsOf, flownCourseOf, outstandingOf, turnBackState } from "../walk/index.ts";
import type { ReopeningReview } from "./reopenings.ts";
import { reopeningsOf } from "./reopenings.ts";

/** How far a handover looks ahead. */
const AHEAD = 1_800_000 as Duration;

/** A crew member in a handover. */
export interface HandoverLane {
  readonly lane: LaneState;
  /** The step that the crew member completed last; `null` when there is none. */
  readonly last: CourseStep | null;
  /** The step in work; `null` when there is none. */
  readonly inWork: CourseStep | null;
  /**
   * The steps that by the forecast begin within the next 30 minutes, in order of time; `null` when there is no forecast.
   */
  readonly next: readonly CourseStep[] | null;
}

/** The state of a walk for somebody who takes over, made from its log alone ([REV4]). Times are PET unless instants. */
export interface Handover {
  readonly state: WalkState;
  /** The instant of the state; that of the closing for a closed walk. */
  readonly at: Instant;
  /** How many entries the log has, and the time of the latest; the time is `null` for an empty log. */
  readonly log: { readonly entries: number; readonly lastAt: Instant | null };
  /** The crew members, in the order of `crew`. */
  readonly lanes: readonly HandoverLane[];
  /** The hold in force; `null` when the walk is not held. */
  readonly hold: Hold | null;
  readonly outstanding: readonly Outstanding[];
  /** Every alert that holds, seen or not, the most urgent first. */
  readonly alerts: readonly WalkAlert[];
  /** What entries did otherwise than planned, without what was taken back and what is told as outstanding. */
  readonly deviations: readonly Deviation[];
  readonly reopenings: readonly ReopeningReview[];
  /** The moves of items that were entered by themselves. */
  readonly corrections: readonly ItemMove[];
  /** The decisions that came out otherwise than expected, and those that were taken otherwise later. */
  readonly decisions: readonly TakenDecision[];
  /** The forecast finish; `null` when there is no forecast. */
  readonly finish: Duration | null;
  /** Limit − forecast finish; `null` without a limit or a forecast. */
  readonly margin: Duration | null;
  readonly turnBack: TurnBackState["turnBack"];
  /** Each with its last reading that counts, and the age of that ([OFF7]). */
  readonly supplies: readonly SupplyState[];
}

/**
 * Returns what somebody has to know who takes over a walk at the instant of its state. Before the clock is started
 * nothing is done and the forecast is the plan; a closed walk has nothing ahead.
 */
export function handoverOf(state: WalkState, folded: Folded): Handover {
  const { ledger, forecast, phase } = state;
  const { outline } = ledger.inForce;
  const pet = state.pet ?? NO_TIME;
  const limits = turnBackState(state);
  const ahead = phase === "closed" ? null : forecast;
  const outstanding = outstandingOf(state);
  const at = later(ledger.petZero ?? ledger.opened.at, pet);
  const flown = lanesInTime(flownCourseOf(ledger, at));
  const expected = ahead && lanesInTime(ahead);
  return {
    state,
    at,
    log: { entries: folded.entries.length, lastAt: folded.lastAt },
    lanes: state.lanes.map((lane, index) => ({
      lane,
      last: lastOf(flown[index] ?? []),
      inWork: flown[index]?.find(({ stage }) => stage === "in-work") ?? null,
      next:
        expected &&
        (expected[index] ?? []).filter(
          ({ stage, start }) => stage === "planned" && start <= plus(pet, AHEAD),
        ),
    })),
    hold: ledger.holds.find(({ until }) => until === null) ?? null,
    outstanding,
    alerts: alertsOf(state, limits),
    deviations: folded.deviations.filter(
      ({ kind, step }) =>
        kind !== "struck" && !outstanding.some((one) => one.kind === kind && one.step === step),
    ),
    reopenings: reopeningsOf(ledger),
    corrections: [...ledger.moves].filter(({ step }) => step === null),
    decisions: ledger.decisions.filter(
      ({ decision, outcome, was }) => was !== null || outline.decision(decision)?.decision.expect !== outcome,
    ),
    finish: ahead?.finish ?? null,
    margin: ahead && marginOf(ahead),
    turnBack: phase === "closed" ? null : limits.turnBack,
    supplies: limits.supplies,
  };
}

/** The step of a lane that was done last; skipped ones are told as deviations. `null` when none was done. */
function lastOf(steps: readonly CourseStep[]): CourseStep | null {
  const done = steps.filter(({ stage }) => stage === "done");
  return done.reduce<CourseStep | null>(
    (latest, one) => (latest && latest.finish > one.finish ? latest : one),
    null,
  );
}
