export { basePlanOf } from "./base-plan.ts";
export type { ClockReading } from "./device-clocks.ts";
export { corrected, deviceClocks } from "./device-clocks.ts";
export type { Forecast, ForecastStep } from "./forecast.ts";
export { forecastOf } from "./forecast.ts";
export { forecastRisk, forecastRiskModel } from "./forecast-risk.ts";
export type { Blocker } from "./gate.ts";
export type {
  Deviation,
  Hold,
  IgnoredEntry,
  ItemMove,
  LaneProgress,
  Ledger,
  Note,
  Opened,
  StepProgress,
  SupplyReading,
  TakenRecord,
} from "./ledger.ts";
export type { LaneStatus, WalkPhase } from "./machines.ts";
export type { Overruled } from "./overruled.ts";
export { overruledOf } from "./overruled.ts";
export type { PlayedMove, PlayedTimes } from "./rehearsal.ts";
export { nextPlayedMove, playedTimesOf } from "./rehearsal.ts";
export type { StateDocument } from "./state-document.ts";
export { stateDocument } from "./state-document.ts";
export type { SupplyState, TurnBackState } from "./turn-back-state.ts";
export { turnBackState } from "./turn-back-state.ts";
export type { Folded, FoldOptions } from "./walk-fold.ts";
export { foldLog, WalkFold } from "./walk-fold.ts";
export type { LaneState, WaitingOn, WalkState } from "./walk-state.ts";
export { walkStateAt } from "./walk-state.ts";
export type { WatchState } from "./watch-state.ts";
export { watchNote, watchStates } from "./watch-state.ts";
