import { hubAnswerWords } from "./answers.ts";
import { hubConsoleWords } from "./console.ts";
import { farHubWords } from "./far.ts";

/** What a hub alone says: on its console, in its answers, and of other hubs. */
export const hubWords = { ...hubAnswerWords, ...hubConsoleWords, ...farHubWords } as const;
