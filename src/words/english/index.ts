import { commandLineWords } from "./command-line.ts";
import { commandLineHelpWords } from "./command-line-help.ts";
import { figuresWords } from "./figures.ts";
import { findingsOfFileWords } from "./findings-file.ts";
import { findingsOfProcedureWords } from "./findings-procedure.ts";
import { findingsOfReferencesWords } from "./findings-references.ts";
import { followWords } from "./follow.ts";
import { followPanelWords } from "./follow-panels.ts";
import { lightSourceWords } from "./light-source.ts";
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
  ...commandLineWords,
  ...commandLineHelpWords,
  ...figuresWords,
  ...findingsOfFileWords,
  ...findingsOfProcedureWords,
  ...findingsOfReferencesWords,
  ...followWords,
  ...followPanelWords,
  ...lightSourceWords,
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
