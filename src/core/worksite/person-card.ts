import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Course, WaitOn } from "../course/index.ts";
import { callsOf, windowLabel } from "../course/index.ts";
import type { Metres } from "../units/index.ts";
import { placeName } from "./frame.ts";
import type { WorksiteGround } from "./ground.ts";
import { TYPE } from "./ground.ts";
import type { PersonAt } from "./person.ts";
import { fitted, textWidth } from "./text-width.ts";
import type { WayHome } from "./way-home.ts";

/** How much a card says: the call sign alone, what is done and what is left of the line too, or also what is held. */
export type CardDetail = "call" | "brief" | "full";

/** How cards are worded. */
export interface CardWording {
  readonly say: (message: Message) => string;
  /** True for whole metres, rounded to the cautious side, as while a course is played: digits that change with each picture are not read. */
  readonly isWhole?: boolean;
}

/** One line of a card. */
export interface CardLine {
  readonly text: string;
  /** `call` is the call sign, `wrong` what needs a look. */
  readonly manner: "call" | "plain" | "wrong";
}

/** What the card of a crew member says. */
export interface CardText {
  readonly lines: readonly CardLine[];
  readonly width: number;
  readonly height: number;
}

/** The widest card, in px. */
const WIDEST = 190;
const MOST_ITEMS = 2;
/** Px before and behind the text; the strand runs down in the first of them. */
const PADDING = { before: 14, behind: 8, above: 4 } as const;

/** What a crew member does, as a sentence without its subject. */
export function doingMessage({ outline }: Course, { doing, steps, place, wait }: PersonAt): Message {
  if (doing === "moves" && place && "to" in place)
    return message("map/moves", { place: nameOf(outline, place.to) });
  if (steps.length > 0)
    return message("map/works-on", {
      steps: steps.flatMap((step) => outline.step(step)?.number ?? []),
    });
  if (doing === "waits") return waitMessage({ outline }, wait?.on ?? null);
  return message(doing === "finished" ? "map/finished" : "map/ready");
}

type Outlined = Pick<Course, "outline">;

function waitMessage({ outline }: Outlined, on: WaitOn | null): Message {
  if (on === null) return message("map/waits");
  if ("crew" in on) return message("map/waits-for", { crew: callsOf(outline, on.crew) });
  if ("window" in on) return message("map/waits-window", { window: windowLabel(outline, on.window) });
  return message("hold" in on ? "map/waits-hold" : "map/waits-time");
}

function nameOf(outline: Course["outline"], id: Parameters<Course["outline"]["place"]>[0]): string {
  const place = outline.place(id);
  return place ? placeName(place) : id;
}

/** Less than a ten-millionth of a metre is what reckoning leaves. */
const LEAST = 1e-7;

/** What is left of a line, to the decimetre or to the metre and never rounded up; `null` without a line or where no routes tell. */
export function leftMessage(
  { line }: PersonAt,
  isWhole = false,
): { readonly says: Message; readonly isShort: boolean } | null {
  if (line?.left == null) return null;
  const { left } = line;
  return left < -LEAST
    ? { says: message("map/too-short", { metres: upTo(-left, isWhole) }), isShort: true }
    : {
        says: message("map/left", {
          metres: (isWhole ? Math.floor(left + LEAST) : Math.max(0, left)) as Metres,
        }),
        isShort: false,
      };
}

/** The way home, to the decimetre or to the metre and never rounded down. */
export function homeMessage({ metres }: WayHome, isWhole = false): Message {
  return message("map/home", { metres: upTo(metres, isWhole) });
}

const upTo = (metres: number, isWhole: boolean): Metres =>
  (isWhole ? Math.ceil(metres - LEAST) : metres) as Metres;

/** One line of a card before it is worded: a message, or a name as it stands in the file. */
interface CardSaying {
  readonly said: Message | string;
  readonly manner: CardLine["manner"];
}

/** What the card of a crew member is to say. `home` is the way home of the one who is farthest. */
function sayingsOf(
  course: Course,
  person: PersonAt,
  home: WayHome | null,
  { detail, isWhole = false }: { readonly detail: CardDetail; readonly isWhole?: boolean },
): readonly CardSaying[] {
  const sayings: CardSaying[] = [{ said: person.call, manner: "call" }];
  const add = (said: Message | string, manner: CardLine["manner"] = "plain") =>
    sayings.push({ said, manner });
  if (detail !== "call") {
    add(doingMessage(course, person));
    const left = leftMessage(person, isWhole);
    if (left) add(left.says, left.isShort ? "wrong" : "plain");
    if (home?.crew === person.crew) add(homeMessage(home, isWhole));
  }
  if (detail === "full") {
    const labels = person.items.map((id) => course.outline.item(id)?.label ?? id);
    const shown = labels.length > MOST_ITEMS + 1 ? labels.slice(0, MOST_ITEMS) : labels;
    for (const label of shown) add(`+ ${label}`);
    const rest = labels.length - shown.length;
    if (rest > 0) add(message("map/more-items", { count: rest }));
  }
  return sayings;
}

/** So many cards are kept for a ground; a long walk passes more, which are put together again. */
const MOST_KEPT = 500;

const keptCards = new WeakMap<WorksiteGround, Map<string, CardText>>();

/**
 * Puts the card of a crew member together. A card that says what another one said on the same ground is that one: a ground is
 * worded in one language.
 */
export function cardOf(
  ground: WorksiteGround,
  course: Course,
  person: PersonAt,
  home: WayHome | null,
  { say, ...wished }: CardWording & { readonly detail: CardDetail },
): CardText {
  const kept = keptCards.get(ground) ?? new Map<string, CardText>();
  keptCards.set(ground, kept);
  const sayings = sayingsOf(course, person, home, wished);
  const key = JSON.stringify(sayings);
  const known = kept.get(key);
  if (known) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const card = laidOut(
    sayings.map(({ said, manner }) => ({ text: typeof said === "string" ? said : say(said), manner })),
  );
  kept.set(key, card);
  return card;
}

function laidOut(texts: readonly CardLine[]): CardText {
  const room = WIDEST - PADDING.before - PADDING.behind;
  const lines = texts.map((line) => ({ ...line, text: fitted(line.text.slice(0, 200), sizeOf(line), room) }));
  const width = Math.max(...lines.map((line) => textWidth(line.text, sizeOf(line), line.manner !== "plain")));
  return {
    lines,
    width: width + PADDING.before + PADDING.behind,
    height: lines.length * TYPE.line + 2 * PADDING.above,
  };
}

const sizeOf = ({ manner }: CardLine): number => (manner === "call" ? TYPE.call : TYPE.foot);
