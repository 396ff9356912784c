import type { RandomSource } from "../plan/index.ts";
import { Crowd } from "./crowd.ts";
import type { DrawnPoint, Rectangle, Segment } from "./rectangle.ts";
import { around, crosses, isInside, overlap } from "./rectangle.ts";

/** A label that wants a place beside its mark. */
export interface LabelWish {
  readonly at: DrawnPoint;
  readonly width: number;
  readonly height: number;
  /** What the mark itself takes up around its point. */
  readonly mark: Rectangle;
}

/**
 * Where a label stands: beside its mark, further off with a line that leads to it, or, where there is no room for its
 * text, as a number that stands for it in a list.
 */
export interface PlacedLabel {
  readonly kind: "beside" | "led" | "number";
  readonly box: Rectangle;
}

/** What labels are placed among. */
export interface LabelGround {
  /** The part of the drawing in which labels stand; a number is put outside where there is no room at all. */
  readonly bounds: Rectangle;
  /** The ways; a label stands beside them rather than across where it can. */
  readonly ways: readonly Segment[];
  /** The size of a number that stands for a label. */
  readonly number: { readonly width: number; readonly height: number };
  /** The gap between a mark and its label. */
  readonly gap: number;
  readonly chance: RandomSource;
}

/**
 * The eight slots beside a point, the best first: right and above, right and below, left and above, left and below, then
 * above, below, right, left (Slocum et al. 2005 after Yoeli 1972; Imhof 1975). Each says which way the label lies.
 */
const SLOTS = [
  { across: 1, down: -1 },
  { across: 1, down: 1 },
  { across: -1, down: -1 },
  { across: -1, down: 1 },
  { across: 0, down: -1 },
  { across: 0, down: 1 },
  { across: 1, down: 0 },
  { across: -1, down: 0 },
] as const;

const shift = (way: -1 | 0 | 1, before: number, size: number, middle: number): number =>
  way < 0 ? before - size : way > 0 ? before : middle - size / 2;

/** The boxes of a label in its eight slots, the best first. */
export function slotBoxes({ at, width, height, mark }: LabelWish, gap: number): readonly Rectangle[] {
  return SLOTS.map(({ across, down }) => ({
    left: shift(across, across < 0 ? mark.left - gap : mark.left + mark.width + gap, width, at.x),
    top: shift(
      down,
      // A label at a corner begins at the middle of its mark; only one above or below has to clear it.
      across !== 0
        ? at.y + down * Math.min(gap, height)
        : down < 0
          ? mark.top - gap
          : mark.top + mark.height + gap,
      height,
      at.y,
    ),
    width,
    height,
  }));
}

const OVERLAPS = 100;
const OUT_OF_BOUNDS = 60;
const ACROSS_A_WAY = 3;
/** What it costs to take the next worse slot. */
const WORSE_SLOT = 0.4;
/** With more labels than this, each takes its best slot in turn and none is moved for another one. */
const MOST_MOVED = 120;
const TRIES_PER_LABEL = 250;
const HOTTEST = 40;

/**
 * Places labels so that none overlaps another label or any mark. Each takes the best of its eight slots, and labels are
 * moved for one another by simulated annealing (Christensen, Marks and Shieber 1995); one without room is led to by a
 * line, or becomes a number. The same input gives the same result, in the order of the input.
 */
export function placeLabels(wishes: readonly LabelWish[], ground: LabelGround): readonly PlacedLabel[] {
  const marks = new Crowd();
  for (const { mark } of wishes) marks.add(mark);
  const slots = wishes.map((wish) => slotBoxes(wish, ground.gap));
  const ownCosts = wishes.map((wish, index) =>
    (slots[index] ?? []).map(
      (box, slot) =>
        slot * WORSE_SLOT +
        (marks.touches(box, wish.mark) || overlap(box, wish.mark) ? OVERLAPS : 0) +
        (isInside(box, ground.bounds) ? 0 : OUT_OF_BOUNDS) +
        ground.ways.filter((way) => crosses(way, box)).length * ACROSS_A_WAY,
    ),
  );
  const chosen = greedyChoice(slots, ownCosts);
  if (wishes.length <= MOST_MOVED) anneal(slots, ownCosts, chosen, ground.chance);
  return settledLabels(wishes, { slots, ownCosts, chosen, marks }, ground);
}

type Boxes = readonly (readonly Rectangle[])[];
type Costs = readonly (readonly number[])[];

/** Gives each label in turn the slot that is cheapest beside those before it. */
function greedyChoice(slots: Boxes, costs: Costs): number[] {
  const taken = new Crowd();
  return slots.map((boxes, index) => {
    let [best, least] = [0, Number.POSITIVE_INFINITY];
    for (const [slot, box] of boxes.entries()) {
      const cost = (costs[index]?.[slot] ?? 0) + (taken.touches(box) ? OVERLAPS : 0);
      if (cost < least) [best, least] = [slot, cost];
    }
    const box = boxes[best];
    if (box) taken.add(box);
    return best;
  });
}

/** Moves labels for one another: a worse arrangement is taken less and less often. The best one is kept in `chosen`. */
function anneal(slots: Boxes, costs: Costs, chosen: number[], chance: RandomSource): void {
  const count = slots.length;
  const near = neighboursOf(slots);
  const costOf = (index: number, slot: number) => {
    const box = slots[index]?.[slot];
    let cost = costs[index]?.[slot] ?? 0;
    for (const other of near[index] ?? []) {
      const taken = slots[other]?.[chosen[other] ?? 0];
      if (box && taken && overlap(box, taken)) cost += OVERLAPS;
    }
    return cost;
  };
  const hasTrouble = chosen.some((slot, index) => costOf(index, slot) >= OUT_OF_BOUNDS);
  if (!hasTrouble) return;
  let total = 0;
  let [best, least] = [[...chosen], 0];
  const tries = count * TRIES_PER_LABEL;
  for (let made = 0; made < tries; made += 1) {
    const index = Math.floor(chance() * count);
    const slot = Math.floor(chance() * SLOTS.length);
    const change = costOf(index, slot) - costOf(index, chosen[index] ?? 0);
    const heat = HOTTEST * (1 - made / tries) ** 2 + 0.01;
    if (change > 0 && chance() >= Math.exp(-change / heat)) continue;
    chosen[index] = slot;
    total += change;
    if (total < least - 1e-9) [best, least] = [[...chosen], total];
  }
  for (const [index, slot] of best.entries()) chosen[index] = slot;
}

/** For each label the others that one of its slots could overlap. */
function neighboursOf(slots: Boxes): readonly (readonly number[])[] {
  const reach = slots.map((boxes) => {
    const left = Math.min(...boxes.map((box) => box.left));
    const top = Math.min(...boxes.map((box) => box.top));
    return {
      left,
      top,
      width: Math.max(...boxes.map((box) => box.left + box.width)) - left,
      height: Math.max(...boxes.map((box) => box.top + box.height)) - top,
    };
  });
  return reach.map((own, index) =>
    reach.flatMap((other, at) => (at !== index && overlap(own, other) ? [at] : [])),
  );
}

interface Choice {
  readonly slots: Boxes;
  readonly ownCosts: Costs;
  readonly chosen: readonly number[];
  readonly marks: Crowd;
}

/** Lets every label stand that overlaps nothing, and finds another place for the rest. */
function settledLabels(
  wishes: readonly LabelWish[],
  { slots, ownCosts, chosen, marks }: Choice,
  ground: LabelGround,
): readonly PlacedLabel[] {
  const taken = new Crowd();
  const placed: (PlacedLabel | null)[] = wishes.map((_, index) => {
    const slot = chosen[index] ?? 0;
    const box = slots[index]?.[slot];
    if (!box || (ownCosts[index]?.[slot] ?? 0) >= OUT_OF_BOUNDS || taken.touches(box)) return null;
    taken.add(box);
    return { kind: "beside", box };
  });
  return placed.map((label, index) => {
    if (label) return label;
    const wish = wishes[index] as LabelWish;
    const isFree = (box: Rectangle) => !taken.touches(box) && !marks.touches(box);
    const found = ledBox(wish, isFree, ground) ?? numberBox(wish, isFree, ground);
    taken.add(found.box);
    return found;
  });
}

/** How far from its mark a label may be led, in px. */
const LONGEST_LEAD = 130;
/** How many boxes there are round a point on each ring. */
export const ANGLES = 16;

/** Every box of a size whose middle lies on rings around a point, the nearest first, from the top clockwise. */
export function* ringBoxes(
  at: DrawnPoint,
  size: { readonly width: number; readonly height: number },
  rings: { readonly from: number; readonly to: number; readonly step: number },
): Generator<Rectangle> {
  for (let radius = rings.from; radius <= rings.to; radius += rings.step) {
    for (let turn = 0; turn < ANGLES; turn += 1) yield ringBox(at, size, radius, turn);
  }
}

/** The box of a size on the ring of a radius around a point; `turn` counts from the top clockwise, up to {@link ANGLES}. */
export function ringBox(
  at: DrawnPoint,
  { width, height }: { readonly width: number; readonly height: number },
  radius: number,
  turn: number,
): Rectangle {
  const angle = (2 * Math.PI * turn) / ANGLES - Math.PI / 2;
  const x = at.x + Math.cos(angle) * (radius + width / 2);
  const y = at.y + Math.sin(angle) * (radius + height / 2);
  return around({ x, y }, width, height);
}

function ledBox(
  wish: LabelWish,
  isFree: (box: Rectangle) => boolean,
  { bounds }: LabelGround,
): PlacedLabel | null {
  for (const box of ringBoxes(wish.at, wish, { from: 18, to: LONGEST_LEAD, step: 14 })) {
    if (isInside(box, bounds) && isFree(box)) return { kind: "led", box };
  }
  return null;
}

function numberBox(
  { at }: LabelWish,
  isFree: (box: Rectangle) => boolean,
  { bounds, number }: LabelGround,
): PlacedLabel {
  const furthest = bounds.width + bounds.height;
  for (const box of ringBoxes(at, number, { from: 10, to: furthest, step: 8 })) {
    if (isInside(box, bounds) && isFree(box)) return { kind: "number", box };
  }
  // There is always room outside of everything.
  for (let radius = furthest; ; radius += number.width) {
    for (const box of ringBoxes(at, number, { from: radius, to: radius, step: 1 })) {
      if (isFree(box)) return { kind: "number", box };
    }
  }
}
