import { figuresWords } from "./figures.ts";
import { followWords } from "./follow.ts";
import { followPanelWords } from "./follow-panels.ts";
import { linkWords } from "./link.ts";
import { partsWords } from "./parts.ts";
import { planWords } from "./plan.ts";
import { printWords } from "./print.ts";
import { readWords } from "./read.ts";
import { reviewWords } from "./review.ts";
import { reviewTableWords } from "./review-tables.ts";
import { shelfWords } from "./shelf.ts";
import { timelineWords } from "./timeline.ts";

/** All messages in English, the source of the other languages, by key. */
export const englishWords = {
  ...figuresWords,
  ...followWords,
  ...followPanelWords,
  ...linkWords,
  ...partsWords,
  ...planWords,
  ...printWords,
  ...readWords,
  ...reviewWords,
  ...reviewTableWords,
  ...shelfWords,
  ...timelineWords,
} as const;
