/**
 * The width of the letters of ASCII in thousandths of the size of the type, each group rounded up: the widths of the
 * face of the screens (B612 Regular).
 */
const WIDTHS: readonly (readonly [number, string])[] = [
  [280, "'|,;"],
  [320, ".:Iij"],
  [360, " !l"],
  [400, '"frt'],
  [480, "()-J[s"],
  [520, "=]cz"],
  [560, "$*/?FLS\\_`aekvxy"],
  [600, "+CEKPTYZbdghnopqu}"],
  [680, "0123456789<>ABDGRVX{"],
  [720, "&HU"],
  [760, "N^w~"],
  [800, "OQ"],
  [880, "#"],
  [920, "%Mm"],
  [960, "W"],
];
/** The same for Arabic, whose letters are narrower where another one joins them on the left than where they end a stretch. */
const ARABIC_WIDTHS: readonly (readonly [ends: number, joined: number, letters: string])[] = [
  [490, 490, "اأإآء"],
  [740, 740, "دذرزؤةوى"],
  [710, 520, "ل"],
  [760, 600, "نيئ"],
  [1000, 600, "بتث"],
  [1000, 720, "فق"],
  [890, 720, "ك"],
  [730, 730, "عغه"],
  [790, 790, "م"],
  [840, 840, "جحخ"],
  [920, 920, "طظ"],
  [1210, 1060, "سش"],
  [1310, 1160, "صض"],
];
/** Marks over and under letters, and those that set the direction of a text, take no room. */
const NO_WIDTH = /[\u064b-\u0655\u200b-\u200f\u2066-\u2069]/;
/** Any other letter counts as wide as the widest one. */
const WIDEST = 1050;
/** Bold letters are at most so much wider. */
const BOLD = 1.1;

const widthOf = new Map(
  WIDTHS.flatMap(([width, letters]) => [...letters].map((one) => [one, width] as const)),
);

const arabicWidthOf = new Map(
  ARABIC_WIDTHS.flatMap(([ends, joined, letters]) =>
    [...letters].map((one) => [one, { ends, joined }] as const),
  ),
);

/** The width of a line of text in px at a size of type in px, never too small for the face of the screens. */
export function textWidth(text: string, size: number, isBold = false): number {
  let thousandths = 0;
  const letters = [...text].filter((letter) => !NO_WIDTH.test(letter));
  for (const [at, letter] of letters.entries()) {
    const arabic = arabicWidthOf.get(letter);
    if (arabic) thousandths += arabicWidthOf.has(letters[at + 1] ?? "") ? arabic.joined : arabic.ends;
    else thousandths += widthOf.get(letter) ?? WIDEST;
  }
  return (thousandths / 1000) * size * (isBold ? BOLD : 1);
}

/** Stands for the rest of a text that is cut off. */
const CUT = "…";

/** How text is broken into lines. */
export interface Breaking {
  readonly size: number;
  readonly width: number;
  readonly lines: number;
}

/**
 * A text in lines of at most the given width. What goes beyond the last line is cut off, which shows as three dots.
 * Spaces, tabs and line ends count as one space each.
 */
export function brokenText(text: string, { size, width, lines: most }: Breaking): readonly string[] {
  const words = text.slice(0, 400).split(/\s+/).filter(Boolean);
  const lines: string[] = [];
  for (const [index, word] of words.entries()) {
    const last = lines.at(-1);
    const joined = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(joined, size) <= width) lines[lines.length - 1] = joined;
    else if (lines.length < most) lines.push(fitted(word, size, width));
    else {
      lines[lines.length - 1] = fitted(`${last} ${words.slice(index).join(" ")}`, size, width);
      break;
    }
  }
  return lines;
}

/** A text that fits a width: whole, or cut off with three dots. */
export function fitted(text: string, size: number, width: number): string {
  if (textWidth(text, size) <= width) return text;
  let letters = [...text];
  while (letters.length > 0 && textWidth(letters.join("") + CUT, size) > width)
    letters = letters.slice(0, -1);
  return `${letters.join("").trimEnd()}${CUT}`;
}
