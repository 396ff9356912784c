import type { ReturnTime } from "../place/index.ts";
import { returnTimeFrom } from "../place/index.ts";
import type { Supply } from "../procedure/index.ts";
import type { Reading, SupplyForecast, TurnBack } from "../supply/index.ts";
import { limitingSupply, supplyForecast, turnBack } from "../supply/index.ts";
import type { CrewId, Duration } from "../units/index.ts";
import { between, NO_TIME } from "../units/index.ts";
import { isComplete } from "./ledger.ts";
import type { WalkState } from "./walk-state.ts";

/** A supply of a crew member, with its forecast ([FOR3]). */
export interface SupplyState {
  readonly supply: Supply;
  readonly forecast: SupplyForecast;
}

/** The limits of a walk, and how long the crew may go on before it must turn back. */
export interface TurnBackState {
  readonly supplies: readonly SupplyState[];
  /** The supply that reaches its redline first; `null` when no supply is forecast to reach it. */
  readonly limiting: (SupplyState & { readonly redlineAt: Duration }) | null;
  /**
   * The longest return time among the crew outside, who go back together; `null` when none of them has a known way to
   * a refuge.
   */
  readonly longestReturn: (ReturnTime & { readonly crew: CrewId }) | null;
  /** `null` when no supply and no elapsed limit sets a turn-back time, or when no way back is known. */
  readonly turnBack: TurnBack | null;
}

/**
 * Returns the supplies, the longest return and the turn-back time of a walk at the instant of its state. Before the
 * clock is started, supplies are forecast from PET 0 at the planned rates.
 */
export function turnBackState(state: WalkState): TurnBackState {
  const { ledger, pet } = state;
  const { outline } = ledger.inForce;
  const now = pet ?? NO_TIME;
  const petZero = ledger.petZero ?? ledger.opened.at;
  const supplies = outline.procedure.supplies.map((supply): SupplyState => {
    const readings = ledger.readings
      .toArray()
      .filter(({ crew, supply: id }) => crew === supply.crew && id === supply.id)
      .map(({ at, value }): Reading => ({ at: between(petZero, at), value }));
    return { supply, forecast: supplyForecast(supply, readings, now) };
  });
  const limiting = limitingSupply(supplies);
  const longestReturn = longestReturnOf(state);
  const limit = outline.procedure.limits.elapsed ?? null;
  return {
    supplies,
    limiting,
    longestReturn,
    // Without a known way back the turn-back time is unknown. Showing the limit itself would mislead the crew.
    turnBack: longestReturn && turnBack(limiting?.redlineAt ?? null, limit, longestReturn.total),
  };
}

function longestReturnOf({ ledger, lanes }: WalkState): TurnBackState["longestReturn"] {
  const { outline } = ledger.inForce;
  let longest: TurnBackState["longestReturn"] = null;
  for (const [lane, { crew, place, status }] of lanes.entries()) {
    if (outline.crew[lane]?.station !== "outside" || place === null || status === "finished") continue;
    const left = (ledger.network.lanes[lane] ?? []).filter((index) => {
      const entry = outline.steps[index];
      return entry?.task.closeout && !isComplete(ledger, entry.step.id);
    });
    const back = returnTimeFrom(outline, ledger.whereabouts, place, left);
    if (back && (longest === null || back.total > longest.total)) longest = { ...back, crew };
  }
  return longest;
}
