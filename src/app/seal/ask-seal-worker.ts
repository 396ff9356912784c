import type { SealRequest, SealTold } from "./seal-request.ts";

/** Asks a worker of its own, and returns what ends it. `tell` is told each answer, and `fail` when there is none to be had. */
export type AskSeal = (request: SealRequest, tell: (told: SealTold) => void, fail: () => void) => () => void;

/** Asks the worker that the app has for logs as records. */
export const askSealWorker: AskSeal = (request, tell, fail) => {
  const worker = new Worker(new URL("./seal-worker.ts", import.meta.url), { type: "module" });
  const end = () => worker.terminate();
  worker.addEventListener("message", ({ data }: MessageEvent<SealTold>) => {
    tell(data);
    if (data.kind !== "progress") end();
  });
  worker.addEventListener("error", () => {
    end();
    fail();
  });
  worker.postMessage(request);
  return end;
};
