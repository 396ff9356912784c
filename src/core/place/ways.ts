import TinyQueue from "tinyqueue";
import type { Procedure, Route, StateValues } from "../procedure/index.ts";
import type { Duration, Metres, PlaceId } from "../units/index.ts";

/** A way along routes. */
export interface Way {
  /** The places along the way, both ends included. */
  readonly places: readonly PlaceId[];
  /** The total of the way, in ms or in metres depending on what was asked for. */
  readonly cost: number;
}

/** Finds ways between the places of a procedure. Routes may be walked in both directions. */
export interface Ways {
  /** The quickest way; `null` when no routes with a time lead there. */
  quickest(from: PlaceId, to: PlaceId): (Way & { readonly cost: Duration }) | null;
  /** The shortest way; `null` when no routes lead there. */
  shortest(from: PlaceId, to: PlaceId): (Way & { readonly cost: Metres }) | null;
  /**
   * The length of the shortest single route between two places; `null` when none joins them directly, zero from a place
   * to itself.
   */
  leg(a: PlaceId, b: PlaceId): Metres | null;
  /** The quickest way to the refuge that is nearest in time; `null` when no routes with a time lead to one. */
  toRefuge(from: PlaceId): (Way & { readonly cost: Duration }) | null;
}

interface Leg {
  readonly to: PlaceId;
  readonly cost: number;
}

/** Every way from one place: for each place, the place before it and the cost so far (Dijkstra 1959). */
interface Reach {
  readonly cost: ReadonlyMap<PlaceId, number>;
  readonly from: ReadonlyMap<PlaceId, PlaceId>;
}

function legsOf(routes: readonly Route[], costOf: (route: Route) => number | undefined): Map<PlaceId, Leg[]> {
  const legs = new Map<PlaceId, Leg[]>();
  for (const route of routes) {
    const cost = costOf(route);
    if (cost === undefined) continue;
    const [a, b] = route.between;
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const known = legs.get(from);
      if (known) known.push({ to, cost });
      else legs.set(from, [{ to, cost }]);
    }
  }
  return legs;
}

function reachFrom(start: PlaceId, legs: ReadonlyMap<PlaceId, readonly Leg[]>): Reach {
  const cost = new Map<PlaceId, number>([[start, 0]]);
  const from = new Map<PlaceId, PlaceId>();
  const open = new TinyQueue<Leg>([{ to: start, cost: 0 }], (a, b) => a.cost - b.cost);
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (next.cost > (cost.get(next.to) ?? Number.POSITIVE_INFINITY)) continue;
    for (const leg of legs.get(next.to) ?? []) {
      const total = next.cost + leg.cost;
      if (total >= (cost.get(leg.to) ?? Number.POSITIVE_INFINITY)) continue;
      cost.set(leg.to, total);
      from.set(leg.to, next.to);
      open.push({ to: leg.to, cost: total });
    }
  }
  return { cost, from };
}

function finder(routes: readonly Route[], costOf: (route: Route) => number | undefined) {
  const legs = legsOf(routes, costOf);
  const known = new Map<PlaceId, Reach>();
  return (start: PlaceId, end: PlaceId): Way | null => {
    const reach = known.get(start) ?? reachFrom(start, legs);
    known.set(start, reach);
    const cost = reach.cost.get(end);
    if (cost === undefined) return null;
    const places = [end];
    for (let at = reach.from.get(end); at !== undefined; at = reach.from.get(at)) places.unshift(at);
    return { places, cost };
  };
}

/** The routes of a procedure that need states, by index, and the ways that were asked for, by which of these are open. */
interface KnownWays {
  readonly gated: readonly { readonly index: number; readonly needs: StateValues }[];
  readonly byOpen: Map<string, Ways>;
}

const known = new WeakMap<Procedure, KnownWays>();

function knownOf(procedure: Procedure): KnownWays {
  const kept = known.get(procedure);
  if (kept) return kept;
  const gated = procedure.routes.flatMap(({ needs }, index) => (needs ? [{ index, needs }] : []));
  const made: KnownWays = { gated, byOpen: new Map() };
  known.set(procedure, made);
  return made;
}

/**
 * The ways of a procedure over all its routes, whatever states they need. Results are cached for each procedure, so
 * asking repeatedly costs little.
 */
export function waysOf(procedure: Procedure): Ways {
  return waysWhile(procedure, () => true);
}

/**
 * The ways of a procedure over the routes that are a way at the moment: those without `needs`, and those for whose
 * needs `holds` is true ([PRO13]). Cached like {@link waysOf}, once for each set of routes.
 */
export function waysWhile(procedure: Procedure, holds: (needs: StateValues) => boolean): Ways {
  const { gated, byOpen } = knownOf(procedure);
  const shut = gated.filter(({ needs }) => !holds(needs));
  const key = shut.map(({ index }) => index).join();
  const kept = byOpen.get(key);
  if (kept) return kept;
  const isShut = new Set(shut.map(({ index }) => index));
  const ways = waysOver(
    procedure,
    procedure.routes.filter((_, index) => !isShut.has(index)),
  );
  byOpen.set(key, ways);
  return ways;
}

function waysOver(procedure: Procedure, routes: readonly Route[]): Ways {
  const quickest = finder(routes, ({ time }) => time) as Ways["quickest"];
  const refuges = procedure.places.filter(({ refuge }) => refuge).map(({ id }) => id);
  const home = new Map<PlaceId, ReturnType<Ways["toRefuge"]>>();
  const legs = new Map<string, Metres>();
  for (const { between, length } of routes) {
    const key = [...between].sort().join(" ");
    const known = legs.get(key);
    if (known === undefined || length < known) legs.set(key, length);
  }
  return {
    quickest,
    leg: (a, b) => (a === b ? (0 as Metres) : (legs.get([a, b].sort().join(" ")) ?? null)),
    shortest: finder(routes, ({ length }) => length) as Ways["shortest"],
    toRefuge: (from) => {
      const found = home.get(from);
      if (found !== undefined) return found;
      const nearest = refuges
        .map((refuge) => quickest(from, refuge))
        .reduce((best, way) => (way && (!best || way.cost < best.cost) ? way : best), null);
      home.set(from, nearest);
      return nearest;
    },
  };
}
