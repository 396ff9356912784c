import type { Network, StatesNow, UnmetNeed } from "../order/index.ts";
import { happensBefore, stateTurnsOf, unmetNeeds } from "../order/index.ts";
import type { StateValues } from "../procedure/index.ts";
import type { PlaceId, StateId } from "../units/index.ts";
import type { Ways } from "./ways.ts";
import { waysWhile } from "./ways.ts";

/** Which routes are a way when a step begins, whatever order the network allows ([PRO13]). */
export interface OpenRoutes {
  /** The ways over the routes that are open for certain when a step begins; `but` names a state taken to be right. */
  before(step: number, but?: StateId): Ways;
  /** Why the route between two places may be closed when a step begins: each state that it needs otherwise. */
  closedBetween(step: number, a: PlaceId, b: PlaceId): (UnmetNeed & { readonly needed: string })[];
}

/**
 * The open routes of a network; `null` when no route has `needs`. Steps in a deadlock or behind one, of which nothing
 * is known, find every route open. In a walk it counts how the states stand `now`.
 */
export function openRoutes(network: Network, now: StatesNow | null = null): OpenRoutes | null {
  const { procedure } = network.outline;
  if (procedure.routes.every(({ needs }) => needs === undefined)) return null;
  const order = happensBefore(network);
  const turns = stateTurnsOf(order, now);
  const unmet = (step: number, needs: StateValues) =>
    order.clock(step) ? unmetNeeds(turns, step, needs) : [];
  return {
    before: (step, but) =>
      waysWhile(procedure, (needs) => unmet(step, needs).every(({ state }) => state === but)),
    closedBetween: (step, a, b) =>
      procedure.routes.flatMap(({ between, needs }) =>
        needs && between.includes(a) && between.includes(b)
          ? unmet(step, needs).map((one) => ({ ...one, needed: needs[one.state as StateId] ?? "" }))
          : [],
      ),
  };
}
