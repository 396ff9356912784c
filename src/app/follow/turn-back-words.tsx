import { brokenHomeMessage } from "../../core/plan/index.ts";
import type { TurnBackState, WalkState } from "../../core/walk/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";

/** What determines the turn-back time, its parts, what the way home breaks, and what bars it. */
export function TurnBackWords({ state, turn }: { readonly state: WalkState; readonly turn: TurnBackState }) {
  const { outline } = state.ledger.inForce;
  const { turnBack, longestReturn, returnPlan, bar } = turn;
  if (bar) return <p>{words("panel/return-barred", { why: bar.why })}</p>;
  const broken = (returnPlan?.broken ?? []).map((one) => (
    <p key={JSON.stringify(one.bound)}>{inWords(brokenHomeMessage(one))}</p>
  ));
  if (!turnBack || !longestReturn) return broken;
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
    <>
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
      {broken}
    </>
  );
}
