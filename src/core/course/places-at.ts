import type { Custody } from "../custody/index.ts";
import { custodyAtStart, movedInTurn } from "../custody/index.ts";
import type { Ways } from "../place/index.ts";
import { LaidLine, lineOver, positionOnWay, waysOf } from "../place/index.ts";
import type { CrewMember, Location } from "../procedure/index.ts";
import type { CrewId, Duration, ItemId, Metres, PlaceId, StepId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { Course, CourseStep } from "./course.ts";
import { isCompleteBy, lanesInTime } from "./course.ts";

/**
 * Where a crew member is: at a place, or on the way from one place to another. `share` is the part of the way behind
 * them by time, from 0 to 1.
 */
export type CrewPlace =
  | { readonly place: PlaceId }
  | { readonly from: PlaceId; readonly to: PlaceId; readonly share: number };

/**
 * A tether's line as it lies: from its anchor along the places that were walked over. Walking back takes it up again.
 */
export interface TetherLine {
  readonly crew: CrewId;
  readonly anchor: PlaceId;
  /**
   * The places from the anchor to the last place passed. The end of a way that is still being walked is not included.
   */
  readonly places: readonly PlaceId[];
  /** The length of line that is out, including the walked share of a way; `null` where no routes give it. */
  readonly used: Metres | null;
  /** The tether's length minus `used`; below zero when the tether does not reach. */
  readonly left: Metres | null;
}

/** Where everybody and everything is at one moment ([MAP1]). */
export interface Places {
  /** Crew members whose place the procedure does not tell are missing here. */
  readonly crew: ReadonlyMap<CrewId, CrewPlace>;
  /** One line for each tethered crew member whose place is known. */
  readonly lines: readonly TetherLine[];
  readonly items: ReadonlyMap<ItemId, Location>;
  /** The steps that have begun and are not complete, in reading order. */
  readonly inWork: readonly StepId[];
}

/** Where everybody and everything is at a PET of a plan, a forecast or a walk as flown. */
export function placesAt(course: Course, pet: Duration): Places {
  const { outline } = course;
  const crew = new Map<CrewId, CrewPlace>();
  const lines: TetherLine[] = [];
  for (const [lane, steps] of lanesInTime(course).entries()) {
    const member = outline.crew[lane];
    if (!member) continue;
    const begun = begunBy(steps, pet);
    const place = placeOf(course, member, begun, pet);
    if (place) crew.set(member.id, "place" in place ? place : withoutTime(place));
    const line = lineOf(course, member, begun, pet);
    if (line) lines.push(line);
  }
  return {
    crew,
    lines,
    items: itemsAt(course, pet),
    inWork: [...course.steps.values()].flatMap((step) => (isInWork(course, step, pet) ? [step.step] : [])),
  };
}

/** Where a crew member is. On a way, `gone` is the time since its start, and `time` the time it takes in all. */
export type CrewPlaceInTime =
  | Extract<CrewPlace, { readonly place: PlaceId }>
  | (Exclude<CrewPlace, { readonly place: PlaceId }> & { readonly gone: Duration; readonly time: Duration });

/**
 * Where the crew member of one lane is at a PET ([MAP1]); `null` when the procedure does not say. It is what `placesAt`
 * says of that crew member, for those who ask for many moments.
 */
export function crewPlaceAt(course: Course, lane: number, pet: Duration): CrewPlaceInTime | null {
  const member = course.outline.crew[lane];
  return member ? placeOf(course, member, begunBy(lanesInTime(course)[lane] ?? [], pet), pet) : null;
}

const begunBy = (steps: readonly CourseStep[], pet: Duration) =>
  steps.filter(({ stage, start }) => stage !== "skipped" && start <= pet);

const withoutTime = ({ from, to, share }: Exclude<CrewPlace, { readonly place: PlaceId }>): CrewPlace => ({
  from,
  to,
  share,
});

function isInWork(course: Course, step: CourseStep, pet: Duration): boolean {
  return step.stage !== "skipped" && step.start <= pet && !isCompleteBy(course, step, pet);
}

/** The share of a step's time that has passed, from 0 to 1. For an overdue step it is 1. */
function shareOf({ start, finish }: CourseStep, pet: Duration): number {
  return finish > start ? Math.min(1, Math.max(0, (pet - start) / (finish - start))) : 0;
}

function placeOf(
  course: Course,
  { start }: CrewMember,
  begun: readonly CourseStep[],
  pet: Duration,
): CrewPlaceInTime | null {
  let place = start ?? null;
  for (const step of begun) {
    const { at, to } = course.outline.step(step.step)?.step ?? {};
    if (at !== undefined) place = at;
    if (to === undefined) continue;
    if (place !== null && place !== to && !isCompleteBy(course, step, pet)) {
      return {
        from: place,
        to,
        share: shareOf(step, pet),
        gone: minus(pet, step.start),
        time: minus(step.finish, step.start),
      };
    }
    if (isCompleteBy(course, step, pet)) place = to;
  }
  return place === null ? null : { place };
}

function lineOf(
  course: Course,
  { id, start, tether }: CrewMember,
  begun: readonly CourseStep[],
  pet: Duration,
): TetherLine | null {
  const first =
    start ?? begun.map(({ step }) => course.outline.step(step)?.step.at).find((at) => at !== undefined);
  if (!tether || first === undefined) return null;
  const ways = waysOf(course.outline.procedure);
  const line = new LaidLine(ways);
  let anchor = tether.anchor;
  let onTheWay: Metres | null = 0 as Metres;
  line.runFrom(anchor, first);
  for (const step of begun) {
    const { at, to, anchor: moved } = course.outline.step(step.step)?.step ?? {};
    if (at !== undefined) line.walkTo(at);
    const isComplete = isCompleteBy(course, step, pet);
    if (to !== undefined && !isComplete) onTheWay = partOfWay(line, to, shareOf(step, pet), ways);
    else if (to !== undefined) line.walkTo(to);
    if (moved !== undefined && isComplete) {
      anchor = moved;
      line.runFrom(moved, line.end ?? moved);
    }
  }
  const out = lengthOf(line.places, ways);
  const used = out === null || onTheWay === null ? null : ((out + onTheWay) as Metres);
  return {
    crew: id,
    anchor,
    places: [...line.places],
    used,
    left: used === null ? null : ((tether.length - used) as Metres),
  };
}

/**
 * The change in a line's length, below zero when it gets shorter, once `share` of the way to a place is walked. Returns
 * `null` where no routes lead there.
 */
function partOfWay(line: LaidLine, to: PlaceId, share: number, ways: Ways): Metres | null {
  const here = line.end;
  if (here === to) return 0 as Metres;
  const position = here === null ? null : positionOnWay(ways, here, to, share);
  const before = lengthOf(line.places, ways);
  if (!position || before === null) return null;
  const laid = position.passed.reduce<readonly PlaceId[]>(lineOver, line.places);
  const passed = lengthOf(laid, ways);
  if (passed === null) return null;
  const onTheLeg = laid.at(-2) === position.to ? -position.walked : position.walked;
  return (passed + onTheLeg - before) as Metres;
}

/** The length of a sequence of places, leg by leg; `null` when two neighbours are not joined by a route. */
function lengthOf(places: readonly PlaceId[], ways: Ways): Metres | null {
  let length = 0;
  for (const [position, place] of places.entries()) {
    const before = places[position - 1];
    if (before === undefined) continue;
    const leg = ways.leg(before, place);
    if (leg === null) return null;
    length += leg;
  }
  return length as Metres;
}

/**
 * Where every item is once everything that was moved by a PET has been moved, by completed steps and by log entries.
 */
function itemsAt(course: Course, pet: Duration): Custody {
  const { outline, steps, corrections } = course;
  const moves = [
    ...[...steps.values()].flatMap((step) =>
      step.stage !== "skipped" && isCompleteBy(course, step, pet)
        ? (outline.step(step.step)?.step.moves ?? []).map(({ item, to }) => ({ at: step.finish, item, to }))
        : [],
    ),
    ...corrections.filter(({ at }) => at <= pet),
  ].sort((a, b) => a.at - b.at);
  return movedInTurn(custodyAtStart(outline.procedure), moves);
}
