import type { Network } from "../order/index.ts";
import { networkOf } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import { whereaboutsOf, withTimesOf } from "../place/index.ts";
import type { Activity, Outline } from "../procedure/index.ts";
import { ReturnMemory } from "./return-memory.ts";

/** What the plan of a scenario rests on whatever its steps take: what must come before what, and who is where. */
export interface PlanGround {
  readonly network: Network;
  readonly whereabouts: Whereabouts;
  /** The returns that were worked out on it. */
  readonly returns: ReturnMemory;
}

/** The ground of the steps that are active in a scenario. */
export function groundOf(outline: Outline, activity: Activity): PlanGround {
  const network = networkOf(outline, activity);
  return { network, whereabouts: whereaboutsOf(network), returns: new ReturnMemory() };
}

/** The ground for another outline, which may differ from that of the ground in its words and in the times of its steps alone. */
export function groundUnder({ network, whereabouts, returns }: PlanGround, outline: Outline): PlanGround {
  const under: Network = { ...network, outline };
  return { network: under, whereabouts: withTimesOf(whereabouts, under), returns };
}
