import { startLanguage } from "../language/index.ts";
import type { WriteRequest } from "./answers.ts";
import { answerOn } from "./answers.ts";

// A mend may add a step, whose text is worded here.
startLanguage();

self.addEventListener("message", ({ data }: MessageEvent<WriteRequest>) => {
  answerOn(data, (answer) => self.postMessage(answer));
});
