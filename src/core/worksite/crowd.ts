import type { Rectangle } from "./rectangle.ts";
import { overlap } from "./rectangle.ts";

/** The side of a square of the grid in px: about as wide as a label. */
const SQUARE = 128;

/** Rectangles by where they lie, so that what one of them touches is found without looking at all. */
export class Crowd {
  readonly #squares = new Map<string, Rectangle[]>();

  add(one: Rectangle): void {
    for (const square of squaresOf(one)) {
      const known = this.#squares.get(square);
      if (known) known.push(one);
      else this.#squares.set(square, [one]);
    }
  }

  /** True when a rectangle overlaps one that was added; `except` does not count. */
  touches(one: Rectangle, except: Rectangle | null = null): boolean {
    return squaresOf(one).some((square) =>
      this.#squares.get(square)?.some((other) => other !== except && overlap(one, other)),
    );
  }
}

function squaresOf({ left, top, width, height }: Rectangle): string[] {
  const squares: string[] = [];
  for (let x = Math.floor(left / SQUARE); x <= Math.floor((left + width) / SQUARE); x += 1) {
    for (let y = Math.floor(top / SQUARE); y <= Math.floor((top + height) / SQUARE); y += 1) {
      squares.push(`${x} ${y}`);
    }
  }
  return squares;
}
