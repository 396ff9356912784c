import { useMemo, useRef } from "react";
import type { DecisionId } from "../../core/units/index.ts";
import { minus } from "../../core/units/index.ts";
import type { Branch, WalkState } from "../../core/walk/index.ts";
import { branchesOf } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { useWalkState } from "./use-walk-state.ts";
import { wouldFinish } from "./would-finish.ts";

interface BranchListProps {
  readonly state: WalkState;
  readonly decision: DecisionId;
}

/** How often the forecasts are made anew while nothing is entered, in ms of PET. */
const ANEW_EVERY = 5_000;

/** What each outcome of a decision would lead to ([WLK8]): its steps and places, the next joint step, finish and margin. */
export function BranchList({ state, decision }: BranchListProps) {
  const { ledger, pet } = state;
  const { outline } = ledger.inForce;
  const beat = pet === null ? null : Math.floor(pet / ANEW_EVERY);
  const latest = useRef(state);
  latest.current = state;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the state changes every second, the branches need not.
  const told = useMemo(
    () => ({ pet: latest.current.pet, branches: branchesOf(latest.current, decision) }),
    [ledger, decision, beat],
  );
  return (
    <section className="branches" aria-label={words("decision/leads-to")}>
      <h3>{words("decision/leads-to")}</h3>
      <ul>
        {told.branches.map((branch) => (
          <li key={branch.outcome}>
            <b>{branch.outcome.replaceAll("-", " ")}</b>
            {branch.isInForce && <span className="follow-tag">{words("decision/in-force")}</span>}
            {branch.isExpected && <span className="follow-tag">{words("decision/expected")}</span>}{" "}
            {stepsText(branch, (place) => outline.place(place)?.label ?? place)}{" "}
            {branch.joint !== null &&
              told.pet !== null &&
              words("decision/joint", {
                step: outline.step(branch.joint.step)?.number ?? branch.joint.step,
                time: minus(branch.joint.start, told.pet),
              })}{" "}
            {pet !== null && wouldFinish(branch)}
          </li>
        ))}
      </ul>
      {pet === null && <p>{words("decision/before-start")}</p>}
    </section>
  );
}

/** The branches of a decision on the step that takes it, from the state that the screen shows. */
export function OpenBranches({ decision }: { readonly decision: DecisionId }) {
  const state = useWalkState();
  return state && <BranchList state={state} decision={decision} />;
}

function stepsText({ steps, places }: Branch, label: (place: Branch["places"][number]) => string): string {
  const count = steps.length;
  if (count === 0) return words("decision/no-steps");
  return places.length === 0
    ? words("decision/steps", { count })
    : words("decision/steps-at", { count, places: places.map(label) });
}
