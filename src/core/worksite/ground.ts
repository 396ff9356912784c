import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { seededSource } from "../plan/index.ts";
import type { Procedure } from "../procedure/index.ts";
import { pictureSource } from "../procedure/index.ts";
import type { Metres, PlaceId } from "../units/index.ts";
import type { FrameSize, WorksiteFrame } from "./frame.ts";
import { frameOf, placeName, pointOf } from "./frame.ts";
import { placeLabels } from "./place-labels.ts";
import type { DrawnPoint, Rectangle, Segment } from "./rectangle.ts";
import { around, nearestIn } from "./rectangle.ts";
import { brokenText, textWidth } from "./text-width.ts";

/** How large things are drawn, in px. */
export const TYPE = { label: 15, line: 18, call: 16, foot: 14 } as const;
/** Half the side of the mark of a place. */
export const MARK = 9;
/** The little box under a mark that holds the count of the items there. */
export const COUNT_BOX = { width: 24, height: 18 } as const;

/** The label of a place as it stands on the map. */
export interface GroundLabel {
  /** Beside its mark, led to by a line, or a number that stands for it in the list. */
  readonly kind: "beside" | "led" | "number";
  readonly box: Rectangle;
  readonly lines: readonly string[];
  /** The end of the line that leads to it; `null` where it stands beside its mark. */
  readonly lead: DrawnPoint | null;
}

/** A place in one of the views. */
export interface GroundPlace {
  readonly place: PlaceId;
  readonly name: string;
  readonly refuge: boolean;
  readonly at: DrawnPoint;
  readonly label: GroundLabel;
}

/** The places and ways as seen from above or from the side. */
export interface GroundView {
  readonly view: "plan" | "side";
  /** From where it is seen, in words; `null` where there is one view alone. */
  readonly caption: string | null;
  readonly part: Rectangle;
  readonly places: readonly GroundPlace[];
  readonly ways: readonly (Segment & { readonly between: readonly [PlaceId, PlaceId] })[];
}

/** A place whose label has no room on the map, by the number that stands there for it. */
export interface NumberedPlace {
  readonly number: number;
  readonly place: PlaceId;
  readonly name: string;
}

/** A picture that lies under the map. */
export interface SitePicture {
  readonly box: Rectangle;
  /** A data URL. It is shown as an image alone, so that nothing in it runs. */
  readonly source: string;
}

/** What of the map does not change from moment to moment. */
export interface WorksiteGround {
  readonly procedure: Procedure;
  readonly frame: WorksiteFrame;
  /** From above, and from the side where heights differ. */
  readonly views: readonly GroundView[];
  readonly numbered: readonly NumberedPlace[];
  readonly picture: SitePicture | null;
  /** A round number of metres and its length in px; `null` on a sketch, which cannot be measured. */
  readonly ruler: { readonly metres: Metres; readonly width: number; readonly text: string } | null;
  /** What is said of the drawing in its foot: that it is a sketch. `null` where it is to scale. */
  readonly remark: string | null;
}

/** The widest line of a label in px. */
const LABEL_WIDTH = 150;
const LABEL_LINES = 3;
const NUMBER_BOX = { width: 26, height: 20 } as const;

/** Lays out what of the map does not change: places, labels, ways, the picture under them. `say` words a message. */
export function groundOf(
  procedure: Procedure,
  size: FrameSize,
  say: (message: Message) => string,
): WorksiteGround {
  const frame = frameOf(procedure, size);
  const numbers = new Map<PlaceId, number>();
  const captions = frame.side
    ? { plan: say(message("map/seen-from-above")), side: say(message("map/seen-from-the-side")) }
    : { plan: null, side: null };
  const plan = { ...viewOf("plan", procedure, frame, numbers), caption: captions.plan };
  const side = frame.side && { ...viewOf("side", procedure, frame, numbers), caption: captions.side };
  return {
    procedure,
    frame,
    views: side ? [plan, side] : [plan],
    numbered: [...numbers].flatMap(([place, number]) => {
      const named = procedure.places.find(({ id }) => id === place);
      return named ? [{ number, place, name: placeName(named) }] : [];
    }),
    picture: pictureUnder(procedure, frame),
    ruler: frame.layout.isSketch || procedure.places.length < 2 ? null : rulerOf(frame, say),
    remark: frame.layout.isSketch ? say(message("map/sketch")) : null,
  };
}

function viewOf(
  view: GroundView["view"],
  procedure: Procedure,
  frame: WorksiteFrame,
  numbers: Map<PlaceId, number>,
): Omit<GroundView, "caption"> {
  const part = (view === "plan" ? frame.plan : frame.side) ?? frame.plan;
  const drawn = (place: PlaceId): DrawnPoint => {
    const point = pointOf(frame, place);
    return (view === "plan" ? null : frame.toSide(point)) ?? frame.toPlan(point);
  };
  const ways = procedure.routes.map(({ between }) => ({
    between,
    from: drawn(between[0]),
    to: drawn(between[1]),
  }));
  const hasItems = procedure.items.length > 0;
  const labels = procedure.places.map((place) => {
    const lines = brokenText(placeName(place), { size: TYPE.label, width: LABEL_WIDTH, lines: LABEL_LINES });
    const at = drawn(place.id);
    return {
      place,
      lines,
      at,
      width: Math.max(0, ...lines.map((line) => textWidth(line, TYPE.label))) + 4,
      height: Math.max(1, lines.length) * TYPE.line,
      mark: markBox(at, hasItems && view === "plan"),
    };
  });
  const placed = placeLabels(labels, {
    bounds: frame.side ? below(inset(part, 4), CAPTION) : inset(part, 4),
    ways,
    number: NUMBER_BOX,
    gap: 4,
    chance: seededSource(1),
  });
  return {
    view,
    part,
    ways,
    places: labels.map(({ place, lines, at }, index): GroundPlace => {
      const found = placed[index];
      const box = found?.box ?? around(at, 0, 0);
      const kind = found?.kind ?? "number";
      return {
        place: place.id,
        name: placeName(place),
        refuge: place.refuge,
        at,
        label: {
          kind,
          box,
          lines: kind === "number" ? [String(numberOf(numbers, place.id))] : lines,
          lead: kind === "beside" ? null : nearestIn(box, at),
        },
      };
    }),
  };
}

/** What the mark of a place takes up, with the box of its items under it. */
export function markBox(at: DrawnPoint, hasItems: boolean): Rectangle {
  const width = hasItems ? Math.max(2 * MARK, COUNT_BOX.width) : 2 * MARK;
  return {
    left: at.x - width / 2,
    top: at.y - MARK,
    width,
    height: 2 * MARK + (hasItems ? COUNT_BOX.height + 2 : 0),
  };
}

function numberOf(numbers: Map<PlaceId, number>, place: PlaceId): number {
  const number = numbers.get(place) ?? numbers.size + 1;
  numbers.set(place, number);
  return number;
}

function inset({ left, top, width, height }: Rectangle, by: number): Rectangle {
  return { left: left + by, top: top + by, width: width - 2 * by, height: height - 2 * by };
}

/** The height of the line that says from where a view is seen, in px. */
const CAPTION = 20;

function below({ left, top, width, height }: Rectangle, by: number): Rectangle {
  return { left, top: top + by, width, height: height - by };
}

function pictureUnder({ site, pictures }: Procedure, { toPlan, scale }: WorksiteFrame): SitePicture | null {
  const picture = site && pictures.find(({ id }) => id === site.picture);
  if (!site || !picture) return null;
  const { x, y } = toPlan({ x: site.left, y: site.top, z: 0 });
  return {
    box: { left: x, top: y, width: site.width * scale, height: site.height * scale },
    source: pictureSource(picture),
  };
}

/** The longest ruler, in px. */
const LONGEST_RULER = 140;

/** A ruler of 1, 2 or 5 times a power of ten metres. */
function rulerOf({ scale }: WorksiteFrame, say: (message: Message) => string): WorksiteGround["ruler"] {
  const most = LONGEST_RULER / scale;
  const power = 10 ** Math.floor(Math.log10(most));
  const metres = ([5, 2, 1].find((times) => times * power <= most) ?? 1) * power;
  return {
    metres: metres as Metres,
    width: metres * scale,
    text: say(message("map/metres", { metres: metres as Metres })),
  };
}
