import { splitAnswersTo } from "./split-answers-to.ts";
import type { SplitRequest } from "./split-request.ts";

self.addEventListener("message", ({ data }: MessageEvent<SplitRequest>) => {
  for (const found of splitAnswersTo(data)) self.postMessage(found);
});
