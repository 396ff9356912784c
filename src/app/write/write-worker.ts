import type { WriteRequest } from "./answers.ts";
import { answerOn } from "./answers.ts";

self.addEventListener("message", ({ data }: MessageEvent<WriteRequest>) => {
  answerOn(data, (answer) => self.postMessage(answer));
});
