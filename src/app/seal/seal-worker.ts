import { platformFits } from "./platform-fits.ts";
import { SealAnswer } from "./seal-answer.ts";
import type { SealRequest, SealTold } from "./seal-request.ts";

/** The answer that is on the way, with what was taken in for it so far. */
let answer: Promise<SealAnswer> | null = null;

self.addEventListener("message", ({ data }: MessageEvent<SealRequest>) => {
  if ("question" in data) {
    const { question } = data;
    const tell = (told: SealTold) => self.postMessage(told);
    answer = platformFits(self.crypto?.subtle).then((platform) => new SealAnswer(question, tell, platform));
  } else {
    answer =
      answer?.then(async (taking) => {
        await ("piece" in data ? taking.take(data.piece) : taking.give());
        return taking;
      }) ?? null;
  }
  // Whoever asked hears of what was thrown as of any error of a worker.
  answer?.catch((cause: unknown) => {
    self.setTimeout(() => {
      throw cause;
    });
  });
});
