import { happensBefore } from "../order/index.ts";
import { reachFindings, sharedRouteFindings } from "../place/index.ts";
import type { Plan, PlanGround } from "../plan/index.ts";
import { groundOf, groundUnder } from "../plan/index.ts";
import type { Activity, Finding, Outline } from "../procedure/index.ts";
import { movesInTime } from "./custody-findings.ts";
import { raceFindings } from "./order-findings.ts";
import { peopleFindings } from "./people-findings.ts";
import { refugeFindings } from "./return-findings.ts";
import { stateFindings } from "./state-findings.ts";

/** What is found in a scenario whatever its steps take. */
interface Timeless {
  /** On people, reach and refuges. */
  readonly along: readonly Finding[];
  /** Races, and needs of states; none where steps wait for each other. */
  readonly ordered: readonly Finding[];
  /** Lines over one route; none where steps wait for each other. */
  readonly shared: readonly Finding[];
}

/** What a scenario comes to whatever its steps take, from one check to the next of procedures that differ in words and times of steps alone. */
export class ScenarioMemory {
  #ground: PlanGround | null = null;
  #timeless: Timeless | null = null;
  #custody: { readonly moves: string; readonly found: readonly Finding[] } | null = null;

  /** What plans of the scenario rest on. */
  ground(outline: Outline, activity: Activity): PlanGround {
    this.#ground = this.#ground === null ? groundOf(outline, activity) : groundUnder(this.#ground, outline);
    return this.#ground;
  }

  /** What is found in it whatever its steps take, worked out once. */
  timeless(plan: Plan): Timeless {
    this.#timeless ??= timelessFindings(plan);
    return this.#timeless;
  }

  /** The findings on items, worked out anew where steps move them in another order, or where one names a time. */
  custody(plan: Plan, work: () => readonly Finding[]): readonly Finding[] {
    const moves = movesInTime(plan).join();
    if (this.#custody?.moves === moves) return this.#custody.found;
    const found = work();
    this.#custody = found.some(({ code }) => code === "custody/hands-full") ? null : { moves, found };
    return found;
  }
}

function timelessFindings(plan: Plan): Timeless {
  const { network, whereabouts } = plan;
  const along = [...peopleFindings(plan), ...reachFindings(network, whereabouts), ...refugeFindings(plan)];
  if (network.ring.length > 0) return { along, ordered: [], shared: [] };
  const order = happensBefore(network);
  return {
    along,
    ordered: [...raceFindings(order), ...stateFindings(order)],
    shared: sharedRouteFindings(order, whereabouts),
  };
}
