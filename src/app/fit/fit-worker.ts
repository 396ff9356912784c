import { english, shellWords } from "../../words/english/shell/index.ts";
import { speak } from "../../words/index.ts";
import { fitAnswerTo } from "./fit-answer-to.ts";
import type { FitRequest } from "./fit-request.ts";

// A mend that the checker tries may add a step, whose text is worded here.
speak(english, shellWords);

self.addEventListener("message", ({ data }: MessageEvent<FitRequest>) => {
  self.postMessage(fitAnswerTo(data));
});
