import { platformFits } from "./platform-fits.ts";
import { sealAnswersTo } from "./seal-answers-to.ts";
import type { SealRequest, SealTold } from "./seal-request.ts";

self.addEventListener("message", ({ data }: MessageEvent<SealRequest>) => {
  const answer = async () => {
    const platform = await platformFits(self.crypto?.subtle);
    await sealAnswersTo(data, (told: SealTold) => self.postMessage(told), platform);
  };
  // Whoever asked hears of what was thrown as of any error of a worker.
  answer().catch((cause: unknown) => {
    self.setTimeout(() => {
      throw cause;
    });
  });
});
