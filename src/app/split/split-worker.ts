import { speakEnglish } from "../language/index.ts";
import { splitAnswersTo } from "./split-answers-to.ts";
import type { SplitRequest } from "./split-request.ts";

// A translation that is added has a text, in the language in use.
speakEnglish();

self.addEventListener("message", ({ data }: MessageEvent<SplitRequest>) => {
  for (const found of splitAnswersTo(data)) self.postMessage(found);
});
