import { useMemo, useRef } from "react";
import type { Risk } from "../../core/plan/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { forecastRiskModel } from "../../core/walk/index.ts";
import { useRisk } from "./use-risk.ts";

/** How often the risk is sampled again while nothing is entered, in ms of PET. */
const ANEW_EVERY = 15_000;

/**
 * The risk of the rest of a walk ([FOR2]), sampled after each entry and every few seconds; `null` when the walk is
 * closed or the risk is unknown.
 */
export function useWalkRisk(state: WalkState): Risk | null {
  const { ledger, pet, phase } = state;
  const beat = pet === null ? null : Math.floor(pet / ANEW_EVERY);
  const latest = useRef(state);
  latest.current = state;
  const { opened, inForce, steps, outcomes, petZero } = ledger;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the state changes every second, the model need not.
  const model = useMemo(
    () => (phase === "closed" ? null : forecastRiskModel(latest.current)),
    [opened, inForce, steps, outcomes, petZero, beat, phase],
  );
  return useRisk(model);
}
