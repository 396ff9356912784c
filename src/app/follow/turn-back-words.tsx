import type { TurnBackState, WalkState } from "../../core/walk/index.ts";
import { message } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";

/** What determines the turn-back time, and its parts. */
export function TurnBackWords({ state, turn }: { readonly state: WalkState; readonly turn: TurnBackState }) {
  const { outline } = state.ledger.inForce;
  const { turnBack, longestReturn } = turn;
  if (!turnBack || !longestReturn) return null;
  const { crew, way, from, closeout } = longestReturn;
  const supply = turnBack.supply?.supply;
  const home = {
    at: turnBack.at,
    who: String(outline.crewMember(crew)?.call),
    way,
    place: outline.place(from)?.label ?? from,
    closeout,
  };
  return (
    <p>
      <Worded
        message={
          turnBack.because === "limit"
            ? message("panel/turn-back-limit", home)
            : message("panel/turn-back-supply", {
                ...home,
                crew: String(supply && outline.crewMember(supply.crew)?.call),
                supply: String(supply?.label ?? supply?.id),
              })
        }
      />
    </p>
  );
}
