import type { FitsAsked, FitsHelper } from "./shared-fits.ts";

interface Open {
  readonly answer: (fits: readonly boolean[]) => void;
  readonly fail: (cause: unknown) => void;
}

/** A worker that looks at signatures. It answers in the order in which it is asked. */
export function fitsHelper(): FitsHelper {
  const worker = new Worker(new URL("./fits-worker.ts", import.meta.url), { type: "module" });
  const open: Open[] = [];
  let isGone = false;
  worker.addEventListener("message", ({ data }: MessageEvent<readonly boolean[]>) =>
    open.shift()?.answer(data),
  );
  worker.addEventListener("error", (cause) => {
    isGone = true;
    worker.terminate();
    for (const { fail } of open.splice(0)) fail(cause);
  });
  return {
    look: (asked: readonly FitsAsked[]) =>
      new Promise((answer, fail) => {
        if (isGone) return fail(new Error("the worker is gone"));
        open.push({ answer, fail });
        worker.postMessage(asked);
      }),
  };
}
