export type { AlertLevel, AlertLog, RaisedAlert, WalkAlert } from "./alert.ts";
export { isAsUrgent, isShown } from "./alert.ts";
export { alertDrafts, alertsOf } from "./alerts-of.ts";
export { amendedSteps } from "./amended-steps.ts";
export type { AmendedHow, AmendedStep, Amendment, AmendmentSeen } from "./amendment.ts";
export type { Amended } from "./amendment-facts.ts";
export { amendedAt } from "./amendment-facts.ts";
export type { AmendmentOutcome } from "./amendment-outcome.ts";
export { amendmentOutcome, amendmentSeenBy } from "./amendment-outcome.ts";
export { askedAgainFor, isAskedAgain } from "./asked-again.ts";
export { basePlanOf, planInForce } from "./base-plan.ts";
export type { BegunSteps } from "./begun-steps.ts";
export { begunSteps, isSpokenOf } from "./begun-steps.ts";
export type { Branch } from "./branches-of.ts";
export { branchesOf } from "./branches-of.ts";
export type { CloseGate } from "./close-gate.ts";
export { closeGateOf } from "./close-gate.ts";
export { closingReason } from "./closing-reason.ts";
export type { Deviation, DeviationKind, EarlyMark } from "./deviation.ts";
export type { ClockJumpEntry, ClockReading } from "./device-clocks.ts";
export type { TaskChoice } from "./forecast.ts";
export { forecastOf, unfitStepOf } from "./forecast.ts";
export { FORECAST_DRAWS, forecastRisk, forecastRiskModel } from "./forecast-risk.ts";
export type { IdleAmendment } from "./idle-amendments.ts";
export { idleAmendmentsOf } from "./idle-amendments.ts";
export type { LaidOutProcedure } from "./laid-out-procedure.ts";
export type { LaneCommand, LaneStatus } from "./lane-machine.ts";
export { laneMay, statusAfter } from "./lane-machine.ts";
export { lastUndoable } from "./last-undoable.ts";
export type {
  EnteredSurprise,
  Hold,
  IgnoredEntry,
  ItemMove,
  LaneProgress,
  Ledger,
  Note,
  OpenedWalk,
  StepProgress,
  SupplyReading,
  TakenDecision,
  TakenRecord,
} from "./ledger.ts";
export { isComplete, progressOf } from "./ledger.ts";
export type { LightInForce } from "./light-in-force.ts";
export { lightInForce } from "./light-in-force.ts";
export type { MisplacedItem } from "./misplaced-items.ts";
export { misplacedItems } from "./misplaced-items.ts";
export { newerEntriesOf } from "./newer-entries.ts";
export type { OutsideCrew } from "./outside-crew.ts";
export type { Outstanding } from "./outstanding.ts";
export { deviationsAt, outstandingOf } from "./outstanding.ts";
export type { Overruled } from "./overruled.ts";
export { overruledOf } from "./overruled.ts";
export type { PaperMark, PaperMarks, TimedMark } from "./paper-marks.ts";
export { paperDrafts, paperMarks, paperSteps } from "./paper-marks.ts";
export type { PaperClock } from "./paper-time.ts";
export { paperTime } from "./paper-time.ts";
export { RefusedCommandError } from "./refused-command-error.ts";
export type { PlayedAct, PlayedMove, PlayedTimes, PlayedTurns } from "./rehearsal.ts";
export { nextPlayedMove, playedTimesOf } from "./rehearsal.ts";
export { isContrary, settledOf } from "./settled-decision.ts";
export { skipReason } from "./skip-reason.ts";
export type { StateDocument } from "./state-document.ts";
export { stateDocument } from "./state-document.ts";
export type { UnsettledState } from "./state-values.ts";
export { stateValuesOf } from "./state-values.ts";
export { factMessage, standingStrikes, strikeReason } from "./strikes.ts";
export { readingsOf } from "./supply-readings.ts";
export type { LongestReturn, SupplyState, TurnBackState } from "./turn-back-state.ts";
export { turnBackState } from "./turn-back-state.ts";
export { flownCourseOf, inWork } from "./walk-course.ts";
export type { Folded, FoldOptions } from "./walk-fold.ts";
export { foldLog, WalkFold } from "./walk-fold.ts";
export type { WalkCommand, WalkPhase } from "./walk-machine.ts";
export { phaseAfter, walkMay } from "./walk-machine.ts";
export type { LaneState, WalkState } from "./walk-state.ts";
export { walkStateAt } from "./walk-state.ts";
export type { WatchState } from "./watch-state.ts";
export { watchRounds, watchStates } from "./watch-state.ts";
