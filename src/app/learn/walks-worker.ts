import { walksAnswersTo } from "./walks-answers-to.ts";
import type { WalksRequest } from "./walks-request.ts";

self.addEventListener("message", ({ data }: MessageEvent<WalksRequest>) => {
  for (const told of walksAnswersTo(data)) self.postMessage(told);
});
