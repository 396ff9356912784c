import type { ReturnTime } from "../place/index.ts";
import { returnTimeFrom } from "../place/index.ts";
import type { Supply } from "../procedure/index.ts";
import type { Reading, SupplyForecast, TurnBack } from "../supply/index.ts";
import { limitingSupply, supplyForecast, turnBack } from "../supply/index.ts";
import type { CrewId, Duration } from "../units/index.ts";
import { between, NO_TIME } from "../units/index.ts";
import { isComplete } from "./ledger.ts";
import type { WalkState } from "./walk-state.ts";

/** A supply of a crew member with where it is heading ([FOR3]). */
export interface SupplyState {
  readonly supply: Supply;
  readonly forecast: SupplyForecast;
}

/** What limits a walk, and until when the crew may go on before it must turn back. */
export interface TurnBackState {
  readonly supplies: readonly SupplyState[];
  /** The supply whose redline is met first; `null` when none is heading there. */
  readonly limiting: (SupplyState & { readonly redlineAt: Duration }) | null;
  /** The longest return of those outside, who go back together; `null` when nobody outside has a way to a refuge. */
  readonly longestReturn: (ReturnTime & { readonly crew: CrewId }) | null;
  /** `null` when neither a supply nor the elapsed limit sets one, or no way back is known. */
  readonly turnBack: TurnBack | null;
}

/** Supplies, return and turn-back time of a walk at the instant of its state; before the clock was started by the plan's rates from PET 0. */
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
    // Without a way back known there is no telling when to turn: saying the limit itself would be false comfort.
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
