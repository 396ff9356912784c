import { fitsHelper } from "./fits-helper.ts";
import { platformFits } from "./platform-fits.ts";
import { SealAnswer } from "./seal-answer.ts";
import type { SealRequest, SealTold } from "./seal-request.ts";
import { sharedFits } from "./shared-fits.ts";

/** More would take from the page what they give. */
const MOST_HELPERS = 3;

/** So many beside this worker and the page; none where there is one processor, or a worker can have no workers. */
const helpers =
  typeof Worker === "undefined"
    ? 0
    : Math.min(MOST_HELPERS, Math.ceil((navigator.hardwareConcurrency - 1) / 2));

/** The answer that is on the way, with what was taken in for it so far. */
let answer: Promise<SealAnswer> | null = null;

self.addEventListener("message", ({ data }: MessageEvent<SealRequest>) => {
  if ("question" in data) {
    const { question } = data;
    const tell = (told: SealTold) => self.postMessage(told);
    answer = platformFits(self.crypto?.subtle).then(
      (own) => new SealAnswer(question, tell, own && sharedFits(own, fitsHelper, helpers)),
    );
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
