import type { CrewId } from "../units/index.ts";
import type { Crowd } from "./crowd.ts";
import type { GroundView } from "./ground.ts";
import type { CardDetail, CardText } from "./person-card.ts";
import { ANGLES, ringBox } from "./place-labels.ts";
import type { DrawnPoint, Rectangle, Segment } from "./rectangle.ts";
import { around, crosses, isInside, nearestIn } from "./rectangle.ts";

/** How large the bead of a crew member is, in px. */
export const BEAD = 7;

/** Where a card stands as seen from its bead, wherever that is: on which ray, and how far off it begins. */
interface Ray {
  /** Counted from the top clockwise. */
  readonly turn: number;
  /** In px. */
  readonly from: number;
}

/** The slot of a card, and what it was found for. */
export interface CardSlot extends Ray {
  /** How much the card says in it. */
  readonly detail: CardDetail;
  readonly sought: Sought;
}

/** What stood where when a slot was sought. */
interface Sought {
  /** What the card was to say. */
  readonly wanted: CardText;
  readonly beads: readonly DrawnPoint[];
  readonly still: Crowd;
}

/** A card that wants a slot beside a bead. */
export interface CardWish {
  readonly crew: CrewId;
  readonly at: DrawnPoint;
  /** Where the bead goes from here, as far as its way is straight: a slot that will be free there too is better. */
  readonly ahead: readonly DrawnPoint[];
  /** How much it is to say at most, and what it says then. */
  readonly detail: CardDetail;
  readonly cardWith: (detail: CardDetail) => CardText;
}

/** A card in its slot. */
export interface PlacedCard {
  readonly crew: CrewId;
  readonly at: DrawnPoint;
  readonly card: CardText;
  readonly box: Rectangle;
  readonly slot: CardSlot;
}

/** What cards are placed among. Each card that has a slot is added to it. */
export interface CardGround extends Pick<GroundView, "part" | "ways"> {
  /** Where the people are. */
  readonly beads: readonly DrawnPoint[];
  /** What of that is the same wherever people are, as the same object. */
  readonly still: Crowd;
  /** What a card may not cover. */
  readonly taken: Crowd;
  /** The labels and cards, over which the line to a card is not to run. */
  readonly written: Rectangle[];
}

/** How much a card says, from much to little. */
const DETAILS: readonly CardDetail[] = ["full", "brief", "call"];

const NEAREST = BEAD + 8;
const FARTHEST = 420;
const APART = 12;

/** What a card that lies over a way costs, and one whose line runs over a label or a card, as px of distance. */
const OVER_A_WAY = 40;
const LED_OVER_TEXT = 50;
/**
 * What it costs when the line to a card runs over somebody who stands beside, whose looks tell them apart. Over somebody elsewhere it never runs: the card would
 * tell of where they are.
 */
const LED_OVER_NEIGHBOUR = 150;
/** Those are beside somebody who are so near, in px: three at one spot are. */
const BESIDE = 40;
/** What it costs when a slot will not be free further on, for each point ahead. */
const NOT_FREE_AHEAD = 60;

/** A slot so near is kept as long as it is free; from one farther off a card goes to one that is better by `STAYS` px. */
const NEAR = 160;
const STAYS = 200;

/**
 * Puts cards where they cover nothing, in the order of the wishes ([MAP4]). A card that has a slot `before` keeps it while that is
 * free, and whoever has to leave theirs moves nobody else ([MAP7]). Where there is no room for all that a card has to say it says less;
 * such a card, and one that is far off, seeks a better slot again only once something is another, for that is looking at every slot.
 */
export function placedCards(
  wishes: readonly CardWish[],
  ground: CardGround,
  before: ReadonlyMap<CrewId, CardSlot>,
): readonly PlacedCard[] {
  const { beads } = ground;
  const settle = (placed: PlacedCard) => {
    ground.taken.add(placed.box);
    ground.written.push(placed.box);
    return placed;
  };
  const stayed = wishes.map((wish) => {
    const slot = before.get(wish.crew);
    if (!slot) return null;
    const isBest = slot.from <= NEAR && slot.detail === wish.detail;
    if (!isBest && isOther(slot.sought, wish, ground)) return null;
    const placed = { ...onRay(wish, wish.cardWith(slot.detail), slot), slot };
    const isClear = metOnTheWay(leadTo(placed), beads) !== "elsewhere";
    return isClear && isFree(placed.box, ground) ? settle(placed) : null;
  });
  return wishes.map((wish, index) => {
    const kept = stayed[index];
    if (kept) return kept;
    const { detail, ...placed } = placedAnew(wish, ground, before.get(wish.crew) ?? null);
    const sought = { wanted: wish.cardWith(wish.detail), beads, still: ground.still };
    return settle({ ...placed, slot: { ...placed.slot, detail, sought } });
  });
}

/** Whether anything is another since a slot was sought: what is to be said, what lies about, or somebody by the width of a ring. */
function isOther(
  { wanted, beads: were, still }: Sought,
  { cardWith, detail }: CardWish,
  ground: CardGround,
): boolean {
  const { beads } = ground;
  return (
    still !== ground.still ||
    wanted !== cardWith(detail) ||
    were.length !== beads.length ||
    beads.some(({ x, y }, index) => {
      const was = were[index] as DrawnPoint;
      return Math.hypot(x - was.x, y - was.y) >= APART;
    })
  );
}

/** A card on a ray, before it is known whether it stays there. */
type OnRay = Omit<PlacedCard, "slot"> & { readonly slot: Ray };

function onRay({ crew, at }: CardWish, card: CardText, { turn, from }: Ray): OnRay {
  return { crew, at, card, slot: { turn, from }, box: ringBox(at, card, from, turn) };
}

const isFree = (box: Rectangle, { part, taken }: CardGround): boolean =>
  isInside(box, part) && !taken.touches(box);

/** The line from a bead to its card. */
const leadTo = ({ at, box }: OnRay): Segment => ({ from: at, to: nearestIn(box, at) });

/** Whom the line from a bead runs over: somebody elsewhere, or else somebody beside; `null` for nobody. */
function metOnTheWay(lead: Segment, beads: readonly DrawnPoint[]): "elsewhere" | "beside" | null {
  let isBeside = false;
  for (const bead of beads) {
    const apart = Math.hypot(bead.x - lead.from.x, bead.y - lead.from.y);
    if (apart === 0 || !crosses(lead, around(bead, 2 * BEAD, 2 * BEAD))) continue;
    if (apart >= BESIDE) return "elsewhere";
    isBeside = true;
  }
  return isBeside ? "beside" : null;
}

/** A card in the best slot for all that it has to say, or for as much of it as there is room for. */
function placedAnew(
  wish: CardWish,
  ground: CardGround,
  kept: Ray | null,
): OnRay & { readonly detail: CardDetail } {
  for (const detail of DETAILS.slice(DETAILS.indexOf(wish.detail))) {
    const placed = bestPlaced(wish, wish.cardWith(detail), ground, kept);
    if (placed) return { ...placed, detail };
  }
  return { ...placedOutside(wish, ground), detail: "call" };
}

/** A card near its bead that covers nothing, rather beside the ways than over them; `null` where there is no room. */
function bestPlaced(wish: CardWish, card: CardText, ground: CardGround, kept: Ray | null): OnRay | null {
  let [best, least]: [OnRay | null, number] = [null, Number.POSITIVE_INFINITY];
  const look = (ray: Ray, less: number) => {
    let cost = ray.from - less;
    if (cost >= least) return;
    const placed = onRay(wish, card, ray);
    if (!isFree(placed.box, ground)) return;
    for (const way of ground.ways) if (crosses(way, placed.box)) cost += OVER_A_WAY;
    for (const ahead of wish.ahead)
      if (!isFree(ringBox(ahead, card, ray.from, ray.turn), ground)) cost += NOT_FREE_AHEAD;
    if (cost >= least) return;
    const lead = leadTo(placed);
    const met = metOnTheWay(lead, ground.beads);
    if (met === "elsewhere") return;
    if (met === "beside") cost += LED_OVER_NEIGHBOUR;
    for (const text of ground.written) if (crosses(lead, text)) cost += LED_OVER_TEXT;
    if (cost < least) [best, least] = [placed, cost];
  };
  if (kept) look(kept, STAYS);
  for (let from = NEAREST; from <= FARTHEST && from < least; from += from < NEAR ? APART : 2 * APART) {
    for (let turn = 0; turn < ANGLES; turn += 1) look({ turn, from }, 0);
  }
  return best;
}

/** The call sign in the first free slot outside of everything, for a drawing that has no room left. */
function placedOutside(wish: CardWish, { taken }: CardGround): OnRay {
  const card = wish.cardWith("call");
  for (let from = NEAREST; ; from += 20) {
    for (let turn = 0; turn < ANGLES; turn += 1) {
      const placed = onRay(wish, card, { turn, from });
      if (!taken.touches(placed.box)) return placed;
    }
  }
}
