import { english, shellWords } from "../../words/english/shell/index.ts";
import { speak } from "../../words/index.ts";
import { splitAnswersTo } from "./split-answers-to.ts";
import type { SplitRequest } from "./split-request.ts";

// A translation that is added has a text, in the language in use.
speak(english, shellWords);

self.addEventListener("message", ({ data }: MessageEvent<SplitRequest>) => {
  for (const found of splitAnswersTo(data)) self.postMessage(found);
});
