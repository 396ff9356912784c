/** The size of a wrist card in whole millimetres. */
export interface CardSize {
  readonly width: number;
  readonly height: number;
}

/** The sizes that are offered by name: four, six and nine to a sheet. */
export const CARD_SIZES = {
  large: { width: 90, height: 122 },
  medium: { width: 58, height: 122 },
  small: { width: 58, height: 79 },
} as const satisfies Readonly<Record<string, CardSize>>;

/** What a sheet of A4 and one of letter both have room for within their margins, in millimetres. */
const SHEET = { width: 186, height: 250 } as const;
/** The strip between two cards, which is cut away. */
const GAP = 6;

/** The smallest and the largest card, in millimetres. */
export const SMALLEST: CardSize = { width: 50, height: 60 };
export const LARGEST: CardSize = SHEET;

/** How many cards stand beside and below one another on a sheet. */
export function cardsOnSheet({ width, height }: CardSize): {
  readonly across: number;
  readonly down: number;
} {
  return {
    across: Math.max(1, Math.floor((SHEET.width + GAP) / (width + GAP))),
    down: Math.max(1, Math.floor((SHEET.height + GAP) / (height + GAP))),
  };
}

/** The distance from the left or upper edge of one card to that of the next, in millimetres. */
export const pitchOf = (length: number): number => length + GAP;

/** A size in figures that a reader typed, brought to whole millimetres within the limits; `null` when it is no number. */
export function lengthWithin(typed: string, least: number, most: number): number | null {
  const value = Math.round(Number(typed));
  return typed.trim() === "" || !Number.isFinite(value) ? null : Math.min(most, Math.max(least, value));
}
