import { helpWords } from "./help.ts";
import { sentenceWords } from "./sentences.ts";

/** What the command line alone says. */
export const commandLineWords = { ...helpWords, ...sentenceWords } as const;
