import { changesWords } from "./changes.ts";
import { helpWords } from "./help.ts";
import { sentenceWords } from "./sentences.ts";

/** What the command line alone says. */
export const commandLineWords = { ...changesWords, ...helpWords, ...sentenceWords } as const;
