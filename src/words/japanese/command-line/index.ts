import type { commandLineWords as english } from "../../english/command-line/index.ts";
import type { Translated } from "../../translated.ts";
import { filesWords } from "./files.ts";
import { helpWords } from "./help.ts";
import { sealSentences } from "./seal.ts";
import { sentenceWords } from "./sentences.ts";
import { surpriseSentences } from "./surprises.ts";

/** What the command line alone says. */
export const commandLineWords: Translated<typeof english> = {
  ...filesWords,
  ...helpWords,
  ...sealSentences,
  ...sentenceWords,
  ...surpriseSentences,
};
