import type { Ways } from "../place/index.ts";
import { waysOf } from "../place/index.ts";
import type { Procedure } from "../procedure/index.ts";
import type { CrewId, Metres, PlaceId } from "../units/index.ts";
import type { PersonAt, Spot } from "./person.ts";

/** The way from where somebody is to a refuge. */
export interface WayHome {
  readonly crew: CrewId;
  /** The places still to be passed, the refuge last. */
  readonly places: readonly PlaceId[];
  /** The metres of the way, over every route, whatever states they need. */
  readonly metres: Metres;
}

/**
 * The way home of whoever outside has the longest one, by metres; the first of them in the order of `crew`. Returns
 * `null` when everybody outside is at a refuge or their place is unknown, or when no routes lead to a refuge.
 */
export function farthestHome(procedure: Procedure, people: readonly PersonAt[]): WayHome | null {
  const refuges = procedure.places.filter(({ refuge }) => refuge).map(({ id }) => id);
  const ways = waysOf(procedure);
  let farthest: WayHome | null = null;
  for (const { crew, station, spot } of people) {
    if (station !== "outside" || !spot) continue;
    const way = homeFrom(ways, refuges, spot);
    if (way && way.metres > (farthest?.metres ?? 0)) farthest = { crew, ...way };
  }
  return farthest;
}

type Home = Omit<WayHome, "crew">;

/** The shorter of the two ways from a spot: back the way it was come, or on over the end of the leg. */
function homeFrom(ways: Ways, refuges: readonly PlaceId[], { from, to, share }: Spot): Home | null {
  const leg = ways.leg(from, to);
  const [back, on] = [
    homeFromPlace(ways, refuges, from),
    from === to ? null : homeFromPlace(ways, refuges, to),
  ];
  if (leg === null) return back;
  const backTotal = back && { ...back, metres: (back.metres + leg * share) as Metres };
  const onTotal = on && { ...on, metres: (on.metres + leg * (1 - share)) as Metres };
  if (!onTotal) return backTotal;
  return backTotal && backTotal.metres <= onTotal.metres ? backTotal : onTotal;
}

/** The quickest way to a refuge, or the shortest where no times are known. */
function homeFromPlace(ways: Ways, refuges: readonly PlaceId[], place: PlaceId): Home | null {
  const quickest = ways.toRefuge(place);
  const way =
    quickest ??
    refuges
      .flatMap((refuge) => ways.shortest(place, refuge) ?? [])
      .reduce<ReturnType<Ways["shortest"]>>(
        (best, one) => (best && best.cost <= one.cost ? best : one),
        null,
      );
  if (!way) return null;
  let metres = 0;
  for (const [index, end] of way.places.entries()) {
    const start = way.places[index - 1];
    if (start !== undefined) metres += ways.leg(start, end) ?? 0;
  }
  return { places: way.places, metres: metres as Metres };
}
