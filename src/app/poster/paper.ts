/** A large sheet of paper, printed landscape; sides in mm, without the margins. */
export interface Paper {
  readonly name: "a3" | "tabloid";
  readonly width: number;
  readonly height: number;
}

const MARGIN = 10;

/** A3 by ISO 216 (420 × 297 mm) and tabloid by ANSI/ASME Y14.1 (17 × 11 in). */
export const PAPERS: readonly Paper[] = [
  { name: "a3", width: 420 - 2 * MARGIN, height: 297 - 2 * MARGIN },
  { name: "tabloid", width: 431.8 - 2 * MARGIN, height: 279.4 - 2 * MARGIN },
];

/** What the head of the poster takes of the height, in mm. */
export const HEAD_HEIGHT = 24;
