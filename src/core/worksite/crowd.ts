import type { Rectangle } from "./rectangle.ts";
import { overlap } from "./rectangle.ts";

/** The side of a square of the grid in px: about as wide as a label. */
const SQUARE = 128;

/** Rectangles by where they lie, so that what one of them touches is found without looking at all. */
export class Crowd {
  readonly #rows = new Map<number, Map<number, Rectangle[]>>();
  readonly #under: Crowd | null;

  /** Those of a crowd `under` it count as well; it is left as it is. */
  constructor(under: Crowd | null = null) {
    this.#under = under;
  }

  add(one: Rectangle): void {
    const { left, top, right, bottom } = squaresOf(one);
    for (let y = top; y <= bottom; y += 1) {
      const row = this.#rows.get(y) ?? new Map<number, Rectangle[]>();
      this.#rows.set(y, row);
      for (let x = left; x <= right; x += 1) {
        const known = row.get(x);
        if (known) known.push(one);
        else row.set(x, [one]);
      }
    }
  }

  /** True when a rectangle overlaps one that was added; `except` does not count. */
  touches(one: Rectangle, except: Rectangle | null = null): boolean {
    const { left, top, right, bottom } = squaresOf(one);
    for (let y = top; y <= bottom; y += 1) {
      const row = this.#rows.get(y);
      if (!row) continue;
      for (let x = left; x <= right; x += 1)
        for (const other of row.get(x) ?? NONE) if (other !== except && overlap(one, other)) return true;
    }
    return this.#under?.touches(one, except) ?? false;
  }
}

const NONE: readonly Rectangle[] = [];

/** The first and the last of the squares that a rectangle lies in, each way. */
function squaresOf({ left, top, width, height }: Rectangle) {
  return {
    left: Math.floor(left / SQUARE),
    top: Math.floor(top / SQUARE),
    right: Math.floor((left + width) / SQUARE),
    bottom: Math.floor((top + height) / SQUARE),
  };
}
