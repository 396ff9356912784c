import { filesWords } from "./files.ts";
import { helpWords } from "./help.ts";
import { sealSentences } from "./seal.ts";
import { sentenceWords } from "./sentences.ts";
import { surpriseSentences } from "./surprises.ts";

/** What the command line alone says. */
export const commandLineWords = {
  ...filesWords,
  ...helpWords,
  ...sealSentences,
  ...sentenceWords,
  ...surpriseSentences,
} as const;
