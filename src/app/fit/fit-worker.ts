import { fitAnswerTo } from "./fit-answer-to.ts";
import type { FitRequest } from "./fit-request.ts";

self.addEventListener("message", ({ data }: MessageEvent<FitRequest>) => {
  self.postMessage(fitAnswerTo(data));
});
