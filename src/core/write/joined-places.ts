import { message } from "../../words/index.ts";
import type { Fields, ProcedureFile } from "../procedure/index.ts";
import type { Duration, Metres } from "../units/index.ts";
import { formatDuration, parseDuration } from "../units/index.ts";
import { freeIdsIn } from "./free-id.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";

type FileRoute = NonNullable<ProcedureFile["routes"]>[number];

/** Two places that a way is to join. */
export type PlacePair = readonly [string, string];

const isBetween = ({ between }: FileRoute, [a, b]: PlacePair): boolean =>
  between.includes(a) && between.includes(b);

const nameOf = (file: ProcedureFile, id: string): string =>
  file.places?.find((place) => place.id === id)?.label ?? id;

/** The time that a way would take, with the way of the file whose pace it has. */
export interface OfferedTime {
  readonly time: Duration;
  /** The two places of that way, by name. */
  readonly from: readonly [string, string];
}

/**
 * The time that a way of so many metres takes at the pace of the slowest way of the file ([WRT5]), up to the next second; `null` where no
 * way has a time and a length, so that there is nothing to go by.
 */
export function offeredTime(file: ProcedureFile, length: Metres): OfferedTime | null {
  const paces = (file.routes ?? []).flatMap(({ between, length: metres, time }) => {
    const taken = time === undefined ? null : parseDuration(time);
    return taken !== null && taken > 0 && metres > 0 ? [{ between, pace: taken / metres }] : [];
  });
  const [first, ...others] = paces;
  if (!first || length <= 0) return null;
  const slowest = others.reduce((slow, one) => (one.pace > slow.pace ? one : slow), first);
  const [a, b] = slowest.between;
  return {
    time: (Math.ceil(Math.round(slowest.pace * length) / 1000) * 1000) as Duration,
    from: [nameOf(file, a), nameOf(file, b)],
  };
}

/**
 * Joins two places by a way ([WRT5]); its length in metres. With `null` for its time the way has none: it is measured, and nobody is
 * planned to take it.
 */
export function placesJoined(
  file: ProcedureFile,
  pair: PlacePair,
  { length, time }: { readonly length: Metres | null; readonly time: Duration | null },
): Proposal {
  const [one, other] = pair;
  if (one === other) return impossible(message("write/way-to-itself"));
  if (pair.some((id) => !file.places?.some((place) => place.id === id)))
    return impossible(message("write/way-places"));
  if (file.routes?.some((route) => isBetween(route, pair)))
    return impossible(message("write/way-there", { one: nameOf(file, one), other: nameOf(file, other) }));
  if (length === null || !Number.isFinite(length) || length < 0)
    return impossible(message("write/way-needs-length"));
  const last = file.routes?.at(-1);
  const add: Fields = {
    between: [...pair],
    length,
    ...(time === null ? {} : { time: formatDuration(time) }),
  };
  return proposed(
    [{ add, list: "routes", ...(last ? { behind: last.between.join(" ") } : { first: true as const }) }],
    [],
  );
}

/** Takes the way between two places out ([WRT5]). */
export function placesParted(file: ProcedureFile, pair: PlacePair): Proposal {
  const route = file.routes?.find((one) => isBetween(one, pair));
  return route
    ? proposed([{ drop: route.between.join(" "), list: "routes" }], [])
    : impossible(message("write/way-places"));
}

/** A new place behind the others, not yet anywhere ([WRT5]), with its id, which is free. */
export function placeAdded(
  file: ProcedureFile,
  label: string,
): { readonly place: string; readonly proposal: Proposal } {
  const place = freeIdsIn(file, "places").next(label, "place");
  const last = file.places?.at(-1);
  const beside = last ? { behind: last.id } : { first: true as const };
  return { place, proposal: proposed([{ add: { id: place, label }, list: "places", ...beside }], []) };
}
