import type { hubWords as english } from "../../english/hub/index.ts";
import type { Translated } from "../../translated.ts";
import { hubAnswerWords } from "./answers.ts";
import { hubConsoleWords } from "./console.ts";
import { farHubWords } from "./far.ts";

/** What a hub alone says: on its console, in its answers, and of other hubs. */
export const hubWords: Translated<typeof english> = { ...hubAnswerWords, ...hubConsoleWords, ...farHubWords };
