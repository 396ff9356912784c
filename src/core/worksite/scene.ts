import { message } from "../../words/index.ts";
import type { CrewId, ItemId, PlaceId } from "../units/index.ts";
import type { CardSlot, CardWish } from "./card-slots.ts";
import { BEAD, placedCards } from "./card-slots.ts";
import { Crowd } from "./crowd.ts";
import { pointOf } from "./frame.ts";
import type { GroundView, WorksiteGround } from "./ground.ts";
import { markBox, TYPE } from "./ground.ts";
import type { SitePoint } from "./layout.ts";
import type { WorksiteMoment } from "./moment.ts";
import { legsOf } from "./moment.ts";
import type { Doing, PersonAt, Spot } from "./person.ts";
import type { CardDetail, CardText, CardWording } from "./person-card.ts";
import { cardOf } from "./person-card.ts";

import type { DrawnPoint, Rectangle } from "./rectangle.ts";
import { around, nearestIn } from "./rectangle.ts";
import { textWidth } from "./text-width.ts";

/** A crew member in one of the views: a bead where they are, and a card beside it. */
export interface ScenePerson {
  readonly crew: CrewId;
  readonly look: number;
  readonly doing: Doing;
  readonly at: DrawnPoint;
  readonly box: Rectangle;
  readonly card: CardText;
  /** The slot beside its bead in which the card stands, which it keeps in the next scene. */
  readonly slot: CardSlot;
  /** The end of the line from the bead to the card. */
  readonly lead: DrawnPoint;
}

/** A line as it lies in one of the views, from its anchor to its crew member. */
export interface SceneLine {
  readonly crew: CrewId;
  readonly look: number;
  readonly points: readonly DrawnPoint[];
  /** True when its crew member waits: it hangs loose. */
  readonly isSlack: boolean;
  readonly isTooShort: boolean;
}

/** The items at a place. */
export interface SceneCount {
  readonly place: PlaceId;
  readonly items: readonly ItemId[];
  readonly at: DrawnPoint;
}

/** One view at a moment. */
export interface SceneView {
  readonly ground: GroundView;
  readonly people: readonly ScenePerson[];
  readonly lines: readonly SceneLine[];
  readonly counts: readonly SceneCount[];
  /** The middles of the ways over which several lines run. */
  readonly shared: readonly DrawnPoint[];
  /** The way home of whoever is farthest; empty without one. */
  readonly home: readonly DrawnPoint[];
}

/** Everything that the map shows at one moment, as plain data in px ([MAP4]). */
export interface WorksiteScene {
  readonly ground: WorksiteGround;
  readonly moment: WorksiteMoment;
  readonly views: readonly SceneView[];
  /** Day or night in a word; `null` where it is not known. */
  readonly light: string | null;
}

/** How a scene is worded. */
export interface SceneWording extends CardWording {
  readonly detail: CardDetail;
}

/**
 * Puts a moment on the ground of a map. The moment may be one of an earlier revision: what lies at a place that the
 * ground has not got is left out. The cards keep the slots that they have in the scene `before`, where there is one ([MAP7]).
 * One ground is worded in one language: a card that says what it said on it is not worded again.
 */
export function worksiteScene(
  ground: WorksiteGround,
  whole: WorksiteMoment,
  wording: SceneWording,
  before: WorksiteScene | null = null,
): WorksiteScene {
  const moment = onGround(ground, whole);
  const { isDark } = moment;
  return {
    ground,
    moment,
    views: ground.views.map((view) =>
      sceneView(
        ground,
        view,
        moment,
        wording,
        before?.views.find((one) => one.ground.view === view.view) ?? null,
      ),
    ),
    light: isDark === null ? null : wording.say(message(isDark ? "map/night" : "map/day")),
  };
}

function onGround({ frame }: WorksiteGround, moment: WorksiteMoment): WorksiteMoment {
  if (moment.course.outline.procedure.places.every(({ id }) => frame.layout.places.has(id))) return moment;
  const has = (...places: readonly PlaceId[]) => places.every((place) => frame.layout.places.has(place));
  return {
    ...moment,
    people: moment.people.map((person) => ({
      ...person,
      spot: person.spot && has(person.spot.from, person.spot.to) ? person.spot : null,
      line: person.line && has(...person.line.over) ? person.line : null,
    })),
    itemsAt: new Map([...moment.itemsAt].filter(([place]) => has(place))),
    shared: moment.shared.filter(({ between }) => has(...between)),
    home: moment.home && has(...moment.home.places) ? moment.home : null,
  };
}

/** Lines that run over one way lie side by side, so many px apart. */
const APART = 6;

function sceneView(
  ground: WorksiteGround,
  view: GroundView,
  moment: WorksiteMoment,
  wording: SceneWording,
  before: SceneView | null,
): SceneView {
  const { frame } = ground;
  const toPx = (point: SitePoint) =>
    (view.view === "plan" ? null : frame.toSide(point)) ?? frame.toPlan(point);
  const pxOf = (place: PlaceId) => toPx(pointOf(frame, place));
  const pxAt = (spot: Spot) => toPx(pointAt(ground, spot));
  const detail = view.view === "side" ? "call" : wording.detail;
  return {
    ground: view,
    people: peopleIn(moment, view, { ground, pxAt, wording: { ...wording, detail } }, before),
    lines: moment.people.flatMap((person) => lineIn(moment, person, pxOf, pxAt) ?? []),
    counts: stillOn(view, moment.itemsAt).counts,
    shared: moment.shared.map(({ between: [a, b] }) => middle(pxOf(a), pxOf(b))),
    home: homeIn(moment, pxOf, pxAt),
  };
}

function pointAt({ frame }: WorksiteGround, { from, to, share }: Spot): SitePoint {
  const [a, b] = [pointOf(frame, from), pointOf(frame, to)];
  const between = (start: number, end: number) => start + (end - start) * share;
  return { x: between(a.x, b.x), y: between(a.y, b.y), z: between(a.z, b.z) };
}

const middle = (a: DrawnPoint, b: DrawnPoint): DrawnPoint => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

function homeIn(
  { home, people }: WorksiteMoment,
  pxOf: (place: PlaceId) => DrawnPoint,
  pxAt: (spot: Spot) => DrawnPoint,
): readonly DrawnPoint[] {
  const spot = people.find(({ crew }) => crew === home?.crew)?.spot;
  return home && spot ? [pxAt(spot), ...home.places.map(pxOf)] : [];
}

function lineIn(
  { people, shared }: WorksiteMoment,
  { crew, look, line, spot, doing }: PersonAt,
  pxOf: (place: PlaceId) => DrawnPoint,
  pxAt: (spot: Spot) => DrawnPoint,
): SceneLine | null {
  if (!line || !spot) return null;
  const end = pxAt(spot);
  const legs = legsOf(line.over, spot);
  const points = legs.flatMap(([a, b], index): DrawnPoint[] => {
    const sharing = shared.find(({ between }) => between.includes(a) && between.includes(b))?.crew ?? [];
    const place = sharing.indexOf(crew);
    const off = place < 0 ? 0 : (place - (sharing.length - 1) / 2) * APART;
    const isLast = index === legs.length - 1 && spot.from !== spot.to;
    // Which side a line lies on must not hang on the direction in which it was walked.
    const turn = a < b ? 1 : -1;
    return aside(pxOf(a), isLast ? end : pxOf(b), off * turn);
  });
  const isWaiting = doing === "waits" && people.length > 1;
  return {
    crew,
    look,
    points: points.length > 0 ? [...points, end] : [],
    isSlack: isWaiting,
    isTooShort: line.left !== null && line.left < 0,
  };
}

/** A straight piece moved sideways by some px. */
function aside(a: DrawnPoint, b: DrawnPoint, off: number): DrawnPoint[] {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (off === 0 || length === 0) return [a, b];
  const [dx, dy] = [(-(b.y - a.y) / length) * off, ((b.x - a.x) / length) * off];
  return [
    { x: a.x + dx, y: a.y + dy },
    { x: b.x + dx, y: b.y + dy },
  ];
}

/** How the people of a view are drawn. */
interface PeopleDrawing {
  readonly ground: WorksiteGround;
  readonly pxAt: (spot: Spot) => DrawnPoint;
  readonly wording: SceneWording;
}

/** Beads where the people are, those at one spot side by side, and their cards where they cover nothing. */
function peopleIn(
  moment: WorksiteMoment,
  view: GroundView,
  { ground, pxAt, wording }: PeopleDrawing,
  before: SceneView | null,
): readonly ScenePerson[] {
  const { course, people, home, itemsAt } = moment;
  const still = stillOn(view, itemsAt).crowd;
  const taken = new Crowd(still);
  const written = view.places.map(({ label }) => label.box);
  const shown = people.flatMap((person) => (person.spot ? [{ person, spot: person.spot }] : []));
  const beads = shown.map(({ spot }, index) => {
    const isSame = (other: Spot) =>
      other.from === spot.from && other.to === spot.to && other.share === spot.share;
    const together = shown.filter((one) => isSame(one.spot));
    const order = together.indexOf(shown[index] as (typeof shown)[number]);
    return fannedOut(pxAt(spot), order, together.length);
  });
  for (const bead of beads) taken.add(around(bead, 2 * BEAD, 2 * BEAD));
  const wishes = shown.map(
    ({ person, spot }, index): CardWish => ({
      crew: person.crew,
      at: beads[index] as DrawnPoint,
      ahead: spot.from === spot.to ? [] : [0.5, 1].map((share) => pxAt({ ...spot, share })),
      detail: wording.detail,
      cardWith: (detail) => cardOf(ground, course, person, home, { ...wording, detail }),
    }),
  );
  const placed = placedCards(wishes, { ...view, beads, still, taken, written }, slotsOf(before));
  return placed.map(({ crew, at, card, box, slot }, index): ScenePerson => {
    const { look, doing } = (shown[index] as (typeof shown)[number]).person;
    return { crew, look, doing, at, box, card, slot, lead: nearestIn(box, at) };
  });
}

/** What of a view is the same whoever is where, as long as the items lie where they lie. */
interface Still {
  readonly itemsAt: Items;
  /** What its words, labels and marks take up. */
  readonly crowd: Crowd;
  readonly counts: readonly SceneCount[];
}

type Items = WorksiteMoment["itemsAt"];

const known = new WeakMap<GroundView, Still>();

function stillOn(view: GroundView, itemsAt: Items): Still {
  const kept = known.get(view);
  if (kept?.itemsAt === itemsAt) return kept;
  const crowd = new Crowd();
  if (view.caption !== null) crowd.add(captionBox(view.part, view.caption));
  for (const { at, place, label } of view.places) {
    crowd.add(markBox(at, view.view === "plan" && itemsAt.has(place)));
    crowd.add(label.box);
  }
  const counts =
    view.view === "side"
      ? []
      : [...itemsAt].flatMap(([place, items]) => {
          const at = view.places.find((one) => one.place === place)?.at;
          return at ? [{ place, items, at }] : [];
        });
  const still = { itemsAt, crowd, counts };
  known.set(view, still);
  return still;
}

/** The slots of the cards of a view. */
const slotsOf = (view: SceneView | null): ReadonlyMap<CrewId, CardSlot> =>
  new Map(view?.people.map(({ crew, slot }) => [crew, slot]));

/** What the words in the corner of a view take up, as the drawing puts them there. */
function captionBox({ left, top }: Rectangle, caption: string): Rectangle {
  return { left: left + 12, top: top + 4, width: textWidth(caption, TYPE.foot), height: 20 };
}

/** Beads at one spot stand in a row across it. */
function fannedOut({ x, y }: DrawnPoint, order: number, count: number): DrawnPoint {
  return { x: x + (order - (count - 1) / 2) * (2 * BEAD + 4), y };
}
