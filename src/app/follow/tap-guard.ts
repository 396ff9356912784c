/** Where a finger or a mouse tapped, in px of the window. */
export interface TapPoint {
  readonly x: number;
  readonly y: number;
}

/** Why a tap does not count: it is the second of a double tap, or what it hit had only just come under the finger. */
export type TapRefusal = "twice" | "moved";

/** How long a control must have been where it is before a tap on it counts, and how long a double tap may take, in ms. */
export const STEADY_FOR = 700;

/** Two taps at most this far apart are at the same spot, in px. */
const SAME_SPOT = 32;

/** The rectangle that a control covers from a moment on, until the next one in its list. */
interface Cover {
  readonly from: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const coverOf = (control: Element, from: number): Cover => {
  const { left, top, right, bottom } = control.getBoundingClientRect();
  return { from, left, top, right, bottom };
};

const isSame = (a: Cover, b: Cover) =>
  a.left === b.left && a.top === b.top && a.right === b.right && a.bottom === b.bottom;

const holds = ({ left, top, right, bottom }: Cover, { x, y }: TapPoint) =>
  x >= left && x <= right && y >= top && y <= bottom;

/**
 * Judges whether a tap can have been meant for the control that it hit ([OFF1]). A list that moves on after a mark
 * brings the next control under the finger, so that the second half of a double tap would mark another step.
 */
export class TapGuard {
  readonly #clock: () => number;
  readonly #covers = new WeakMap<Element, readonly Cover[]>();
  #last: (TapPoint & { readonly at: number }) | null = null;

  /** `clock` tells the time in ms and never goes back. */
  constructor(clock: () => number) {
    this.#clock = clock;
  }

  /** Takes note of where the controls are. It is to be called whenever they can have moved. */
  look(controls: Iterable<Element>): void {
    for (const control of controls) this.#coversOf(control);
  }

  /**
   * Returns why a tap on a control does not count, or `null` when it counts. `point` is `null` for a key or a screen
   * reader, for which only a control that is new is refused. A tap that counts is remembered for the next one.
   */
  judge(control: Element, point: TapPoint | null): TapRefusal | null {
    const now = this.#clock();
    const isSecond =
      point !== null &&
      this.#last !== null &&
      now - this.#last.at < STEADY_FOR &&
      Math.hypot(point.x - this.#last.x, point.y - this.#last.y) <= SAME_SPOT;
    if (isSecond) return "twice";
    const covers = this.#coversOf(control);
    const isNew = covers[0] === undefined || now - covers[0].from < STEADY_FOR;
    if (isNew || (point !== null && !covers.every((cover) => holds(cover, point)))) return "moved";
    if (point) this.#last = { ...point, at: now };
    return null;
  }

  /** Returns the rectangles that a control covered within the last {@link STEADY_FOR}, the present one last. */
  #coversOf(control: Element): readonly Cover[] {
    const now = this.#clock();
    const known = this.#covers.get(control) ?? [];
    const present = coverOf(control, now);
    const last = known.at(-1);
    const all = last && isSame(last, present) ? known : [...known, present];
    // The last rectangle that was already there when the time began still counts; those before it do not.
    const first = all.findLastIndex(({ from }) => now - from >= STEADY_FOR);
    const kept = first > 0 ? all.slice(first) : all;
    this.#covers.set(control, kept);
    return kept;
  }
}
