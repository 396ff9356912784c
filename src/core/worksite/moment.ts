import type { Course, CrewPlace, Places, TetherLine, Wait } from "../course/index.ts";
import { isCompleteBy, lanesInTime, onceASpell, placesAt, waitsOf } from "../course/index.ts";
import { crewHolding, holderOf } from "../custody/index.ts";
import type { Ways } from "../place/index.ts";
import { lineOver, positionOnWay, waysOf } from "../place/index.ts";
import type { Location } from "../procedure/index.ts";
import { strandLooks } from "../procedure/index.ts";
import type { CrewId, Duration, ItemId, PlaceId, StepId } from "../units/index.ts";
import { darkAt } from "./dark-at.ts";
import type { PersonAt, Spot } from "./person.ts";
import type { WayHome } from "./way-home.ts";
import { farthestHome } from "./way-home.ts";

/** A way over which several lines run. */
export interface SharedWay {
  readonly between: readonly [PlaceId, PlaceId];
  readonly crew: readonly CrewId[];
}

/** What there is to be seen at the worksite at one moment of a course ([MAP4]). */
export interface WorksiteMoment {
  readonly course: Course;
  readonly pet: Duration;
  /** Everybody, in the order of `crew`. */
  readonly people: readonly PersonAt[];
  /** The items at each place that has any, with what is packed in them, in the order of the file. */
  readonly itemsAt: ReadonlyMap<PlaceId, readonly ItemId[]>;
  /** Where every item is: at a place, with somebody, or in another item. */
  readonly items: ReadonlyMap<ItemId, Location>;
  readonly shared: readonly SharedWay[];
  /** The way home of whoever outside has the longest one; `null` when nobody is away from a refuge or no ways lead to one. */
  readonly home: WayHome | null;
  readonly inWork: readonly StepId[];
  /** True at night, false by day; `null` where it is not known. */
  readonly isDark: boolean | null;
}

/**
 * Everything that the map shows of a plan, a forecast or a walk as flown at a PET. What stays the same for the whole spell of the
 * course is the same object at each PET of it: whoever stands still, and everything else while nobody is under way.
 */
export function momentOf(course: Course, pet: Duration): WorksiteMoment {
  const { moment, underWay } = momentInSpell(course, pet);
  if (underWay.length === 0) return { ...moment, pet };
  const { procedure } = course.outline;
  const ways = waysOf(procedure);
  const places = placesAt(course, pet);
  const people = moment.people.map((person) =>
    underWay.includes(person.crew) ? placed(person, places, ways) : person,
  );
  return { ...moment, pet, people, shared: sharedWays(people), home: farthestHome(procedure, people) };
}

/** True when nothing that the map shows of one moment differs from another one of the same course. */
export function looksTheSame(one: WorksiteMoment, other: WorksiteMoment): boolean {
  return (
    one.itemsAt === other.itemsAt &&
    one.isDark === other.isDark &&
    one.people.every((person, place) => person === other.people[place])
  );
}

/** The moment of a PET, and who is on a way then: in its spell nobody else and nothing else changes. */
const momentInSpell = onceASpell((course, pet) => {
  const { outline } = course;
  const { procedure } = outline;
  const ways = waysOf(procedure);
  const places = placesAt(course, pet);
  const looks = strandLooks(procedure.crew);
  const heldBy = new Map<CrewId, ItemId[]>();
  const itemsAt = new Map<PlaceId, ItemId[]>();
  for (const { id } of procedure.items) {
    const holder = holderOf(places.items, id);
    if (!holder) continue;
    if ("place" in holder) addTo(itemsAt, holder.place, id);
    else for (const crew of crewHolding(holder)) addTo(heldBy, crew, id);
  }
  const inWork = places.inWork.flatMap((id) => outline.step(id)?.step ?? []);
  const people = procedure.crew.map(({ id, call, station }, lane): PersonAt => {
    const place = places.crew.get(id) ?? null;
    const steps = inWork.filter(({ by }) => by.includes(id));
    const wait = steps.length > 0 ? null : waitAt(course, id, pet);
    const person = {
      crew: id,
      call,
      station,
      look: looks[lane] ?? 1,
      doing:
        steps.length === 0
          ? wait
            ? "waits"
            : isThrough(course, lane, pet)
              ? "finished"
              : "ready"
          : place && "from" in place
            ? "moves"
            : "works",
      steps: steps.map((step) => step.id),
      wait,
      items: heldBy.get(id) ?? [],
    } as const;
    return placed(person, places, ways);
  });
  const moment: WorksiteMoment = {
    course,
    pet,
    people,
    itemsAt,
    items: places.items,
    shared: sharedWays(people),
    home: farthestHome(procedure, people),
    inWork: places.inWork,
    isDark: darkAt(course, pet),
  };
  const underWay = people.flatMap(({ crew, place }) => (place && "from" in place ? [crew] : []));
  return { moment, underWay };
});

/** Somebody with where they and their line are. */
function placed(person: Omit<PersonAt, "place" | "spot" | "line">, places: Places, ways: Ways): PersonAt {
  const place = places.crew.get(person.crew) ?? null;
  const line = places.lines.find(({ crew }) => crew === person.crew);
  return {
    ...person,
    place,
    spot: place && spotOf(ways, place),
    line: line ? { ...line, over: overOf(ways, line, place) } : null,
  };
}

function addTo<Key>(lists: Map<Key, ItemId[]>, key: Key, item: ItemId): void {
  const known = lists.get(key);
  if (known) known.push(item);
  else lists.set(key, [item]);
}

function waitAt(course: Course, crew: CrewId, pet: Duration): Wait | null {
  return waitsOf(course).find((wait) => wait.crew === crew && wait.from <= pet && pet < wait.to) ?? null;
}

/** True when a lane has no step that is not complete. */
function isThrough(course: Course, lane: number, pet: Duration): boolean {
  return (lanesInTime(course)[lane] ?? []).every((step) => isCompleteBy(course, step, pet));
}

/** Where on the map a crew member is: on a leg of the way by share of its length, or on a straight line without a way. */
function spotOf(ways: Ways, place: CrewPlace): Spot {
  if ("place" in place) return { from: place.place, to: place.place, share: 0 };
  const position = positionOnWay(ways, place.from, place.to, place.share);
  if (!position) return place;
  const { from, to, walked, length } = position;
  return { from, to, share: length > 0 ? walked / length : 0 };
}

/** The places of a line with those that were passed on the way that is being walked. */
function overOf(ways: Ways, { places }: TetherLine, place: CrewPlace | null): readonly PlaceId[] {
  if (!place || "place" in place) return places;
  const position = positionOnWay(ways, place.from, place.to, place.share);
  if (!position) return places;
  const laid = position.passed.reduce(lineOver, places);
  // On the way back the last leg is being taken up: the line ends before its last place.
  return laid.at(-2) === position.to ? laid.slice(0, -1) : laid;
}

/** The ways over which the lines of several run, a leg that somebody is on included. */
function sharedWays(people: readonly PersonAt[]): readonly SharedWay[] {
  const found = new Map<string, { readonly between: readonly [PlaceId, PlaceId]; readonly crew: CrewId[] }>();
  for (const { crew, line, spot } of people) {
    for (const [a, b] of line ? legsOf(line.over, spot) : []) {
      const key = [a, b].sort().join(" ");
      const known = found.get(key);
      if (!known) found.set(key, { between: [a, b], crew: [crew] });
      else if (!known.crew.includes(crew)) known.crew.push(crew);
    }
  }
  return [...found.values()].filter((way) => way.crew.length > 1);
}

/** The legs of a line, from the anchor to its crew member. */
export function legsOf(
  over: readonly PlaceId[],
  spot: Spot | null,
): readonly (readonly [PlaceId, PlaceId])[] {
  const end = over.at(-1);
  const next = spot && end === spot.from ? spot.to : spot?.from;
  const all = end !== undefined && next !== undefined && next !== end ? [...over, next] : over;
  return all.flatMap((place, index) => {
    const before = all[index - 1];
    return before === undefined ? [] : [[before, place] as const];
  });
}
