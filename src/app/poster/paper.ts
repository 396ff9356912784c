/** A large sheet of paper, printed landscape; sides in mm. */
export interface Paper {
  readonly name: "iso" | "ansi";
  readonly width: number;
  readonly height: number;
}

/** The margin on every side, in mm. */
export const MARGIN = 10;

/** A3 by ISO 216 (420 × 297 mm) and tabloid by ANSI/ASME Y14.1 (17 × 11 in). */
export const PAPERS: readonly Paper[] = [
  { name: "iso", width: 420, height: 297 },
  { name: "ansi", width: 431.8, height: 279.4 },
];

/** What the head of the poster takes of the height, in mm. */
export const HEAD_HEIGHT = 24;
