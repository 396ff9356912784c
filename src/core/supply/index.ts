export { impossibleReading } from "./impossible-reading.ts";
export type { GasTurnover } from "./metabolic-rate.ts";
export { energyOf, gasFor, kcalPerHourOf } from "./metabolic-rate.ts";
export type { Reading, SupplyForecast, SupplyPlan } from "./supply-forecast.ts";
export { READINGS_FITTED, supplyForecast } from "./supply-forecast.ts";
export type { TurnBack } from "./turn-back.ts";
export { limitingSupply, turnBack } from "./turn-back.ts";
