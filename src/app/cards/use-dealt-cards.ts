import { type RefObject, useLayoutEffect, useState } from "react";
import type { CardPart } from "./dealt-cards.ts";
import { dealtCards } from "./dealt-cards.ts";

/** How many letters a row has at first. Where rows come out too high for the card, it is halved until they are not. */
export const MOST_LETTERS = 320;
const FEWEST_LETTERS = 8;

interface Measured {
  /** What was measured: other groups, another size or other fonts are measured anew. */
  readonly of: unknown;
  readonly cards: readonly (readonly CardPart[])[];
}

/**
 * Deals out what is drawn in `drawn`, for each element of the class `card-group` its rows, by their heights as they are in
 * this browser, which are those of the paper. `null` until it was measured. Calls `onTooLong` with fewer letters when a
 * row takes more than half of a card.
 *
 * @param of changes whenever something else is drawn
 * @param room the height of the text on a card in millimetres
 */
export function useDealtCards(
  drawn: RefObject<HTMLElement | null>,
  of: unknown,
  { room, letters, onTooLong }: { room: number; letters: number; onTooLong: (fewer: number) => void },
): readonly (readonly CardPart[])[] | null {
  const [measured, setMeasured] = useState<Measured | null>(null);
  const [fonts, setFonts] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `fonts` tells that what is drawn has other heights.
  useLayoutEffect(() => {
    if (!drawn.current) return;
    const heightOf = (element: Element) => element.getBoundingClientRect().height;
    const heights = [...drawn.current.querySelectorAll(".card-group")].map((group) =>
      [...group.querySelectorAll(".card-row")].map(heightOf),
    );
    const mark = Math.max(0, ...[...drawn.current.querySelectorAll(".card-mark")].map(heightOf));
    // One pixel is left free, since heights are rounded when they are printed.
    const px = (room / 25.4) * 96 - 1;
    if (heights.flat().some((height) => height > px / 2) && letters > FEWEST_LETTERS) {
      onTooLong(Math.max(FEWEST_LETTERS, Math.floor(letters / 2)));
      return;
    }
    setMeasured({ of, cards: dealtCards(heights, { room: px, mark }) });
  }, [drawn, of, room, letters, onTooLong, fonts]);
  useLayoutEffect(() => {
    let isOver = false;
    const measureAgain = async () => {
      await document.fonts?.ready;
      if (!isOver) setFonts((times) => times + 1);
    };
    void measureAgain();
    return () => {
      isOver = true;
    };
  }, []);
  return measured !== null && measured.of === of ? measured.cards : null;
}
