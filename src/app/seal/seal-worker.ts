import { sealAnswersTo } from "./seal-answers-to.ts";
import type { SealRequest, SealTold } from "./seal-request.ts";

self.addEventListener("message", ({ data }: MessageEvent<SealRequest>) => {
  sealAnswersTo(data, (told: SealTold) => self.postMessage(told));
});
