import { filesWords } from "./files.ts";
import { helpWords } from "./help.ts";
import { sentenceWords } from "./sentences.ts";

/** What the command line alone says. */
export const commandLineWords = { ...filesWords, ...helpWords, ...sentenceWords } as const;
