import { platformFits } from "./platform-fits.ts";
import type { FitsAsked } from "./shared-fits.ts";

const platform = platformFits(self.crypto?.subtle);

/** The last answer, so that answers come in the order of what was asked. */
let last: Promise<void> = Promise.resolve();

self.addEventListener("message", ({ data }: MessageEvent<readonly FitsAsked[]>) => {
  last = last.then(async () => {
    const fits = await platform;
    self.postMessage(fits ? await Promise.all(data.map((asked) => fits(...asked))) : data.map(() => false));
  });
});
