import type { Custody } from "../custody/index.ts";
import { custodyAtStart, movedInTurn } from "../custody/index.ts";
import type { Ways } from "../place/index.ts";
import { LaidLine, lineOver, positionOnWay, waysOf } from "../place/index.ts";
import type { CrewMember, Location } from "../procedure/index.ts";
import type { CrewId, Duration, ItemId, Metres, PlaceId, StepId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { Course, CourseStep } from "./course.ts";
import { isCompleteBy, lanesInTime } from "./course.ts";
import { onceASpell } from "./spell.ts";

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
  const { lanes, items, inWork } = placesInSpell(course, pet);
  const ways = waysOf(course.outline.procedure);
  const crew = new Map<CrewId, CrewPlace>();
  const lines: TetherLine[] = [];
  for (const { member, standing, line } of lanes) {
    if (standing) crew.set(member.id, "place" in standing ? standing : withoutTime(onTheWay(standing, pet)));
    if (line) lines.push(lineAt(line, member, ways, pet));
  }
  return { crew, lines, items, inWork };
}

/** Where a crew member is throughout a spell: at a place, or on the way of a step. */
type Standing =
  | Extract<CrewPlace, { readonly place: PlaceId }>
  | { readonly from: PlaceId; readonly to: PlaceId; readonly by: CourseStep };

/** A line throughout a spell: what is laid, and what is being walked from where. */
interface LineInSpell {
  readonly anchor: PlaceId;
  readonly places: readonly PlaceId[];
  /** The length of what is laid; `null` where no routes give it. */
  readonly out: Metres | null;
  readonly walked: {
    readonly laid: readonly PlaceId[];
    readonly to: PlaceId;
    readonly by: CourseStep;
  } | null;
}

const placesInSpell = onceASpell((course, pet) => ({
  lanes: [...lanesInTime(course).entries()].flatMap(([lane, steps]) => {
    const member = course.outline.crew[lane];
    if (!member) return [];
    const begun = begunBy(steps, pet);
    return [
      {
        member,
        standing: standingOf(course, member, begun, pet),
        line: lineInSpell(course, member, begun, pet),
      },
    ];
  }),
  items: itemsAt(course, pet),
  inWork: [...course.steps.values()].flatMap((step) => (isInWork(course, step, pet) ? [step.step] : [])),
}));

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
  if (!member) return null;
  const standing = standingOf(course, member, begunBy(lanesInTime(course)[lane] ?? [], pet), pet);
  return standing && "by" in standing ? onTheWay(standing, pet) : standing;
}

const begunBy = (steps: readonly CourseStep[], pet: Duration) =>
  steps.filter(({ stage, start }) => stage !== "skipped" && start <= pet);

type OnTheWay = Exclude<CrewPlaceInTime, { readonly place: PlaceId }>;

const withoutTime = ({ from, to, share }: OnTheWay): CrewPlace => ({ from, to, share });

const onTheWay = ({ from, to, by }: Extract<Standing, { by: CourseStep }>, pet: Duration): OnTheWay => ({
  from,
  to,
  share: shareOf(by, pet),
  gone: minus(pet, by.start),
  time: minus(by.finish, by.start),
});

function isInWork(course: Course, step: CourseStep, pet: Duration): boolean {
  return step.stage !== "skipped" && step.start <= pet && !isCompleteBy(course, step, pet);
}

/** The share of a step's time that has passed, from 0 to 1. For an overdue step it is 1. */
function shareOf({ start, finish }: CourseStep, pet: Duration): number {
  return finish > start ? Math.min(1, Math.max(0, (pet - start) / (finish - start))) : 0;
}

function standingOf(
  course: Course,
  { start }: CrewMember,
  begun: readonly CourseStep[],
  pet: Duration,
): Standing | null {
  let place = start ?? null;
  for (const step of begun) {
    const { at, to } = course.outline.step(step.step)?.step ?? {};
    if (at !== undefined) place = at;
    if (to === undefined) continue;
    const isComplete = isCompleteBy(course, step, pet);
    if (place !== null && place !== to && !isComplete) return { from: place, to, by: step };
    if (isComplete) place = to;
  }
  return place === null ? null : { place };
}

function lineInSpell(
  course: Course,
  { start, tether }: CrewMember,
  begun: readonly CourseStep[],
  pet: Duration,
): LineInSpell | null {
  const first =
    start ?? begun.map(({ step }) => course.outline.step(step)?.step.at).find((at) => at !== undefined);
  if (!tether || first === undefined) return null;
  const ways = waysOf(course.outline.procedure);
  const line = new LaidLine(ways);
  let anchor = tether.anchor;
  let walked: LineInSpell["walked"] = null;
  line.runFrom(anchor, first);
  for (const step of begun) {
    const { at, to, anchor: moved } = course.outline.step(step.step)?.step ?? {};
    if (at !== undefined) line.walkTo(at);
    const isComplete = isCompleteBy(course, step, pet);
    if (to !== undefined && !isComplete) walked = { laid: [...line.places], to, by: step };
    else if (to !== undefined) line.walkTo(to);
    if (moved !== undefined && isComplete) {
      anchor = moved;
      line.runFrom(moved, line.end ?? moved);
    }
  }
  return { anchor, places: [...line.places], out: lengthOf(line.places, ways), walked };
}

function lineAt(
  { anchor, places, out, walked }: LineInSpell,
  { id, tether }: CrewMember,
  ways: Ways,
  pet: Duration,
): TetherLine {
  const part = walked ? partOfWay(walked.laid, walked.to, shareOf(walked.by, pet), ways) : 0;
  const used = out === null || part === null ? null : ((out + part) as Metres);
  const left = used === null || !tether ? null : ((tether.length - used) as Metres);
  return { crew: id, anchor, places, used, left };
}

/**
 * The change in a line's length, below zero when it gets shorter, once `share` of the way to a place is walked. Returns
 * `null` where no routes lead there.
 */
function partOfWay(line: readonly PlaceId[], to: PlaceId, share: number, ways: Ways): Metres | null {
  const here = line.at(-1);
  if (here === to) return 0 as Metres;
  const position = here === undefined ? null : positionOnWay(ways, here, to, share);
  const before = lengthOf(line, ways);
  if (!position || before === null) return null;
  const laid = position.passed.reduce<readonly PlaceId[]>(lineOver, line);
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
