import { useEffect, useState } from "react";
import type { FitAnswer, FitRequest } from "./fit-request.ts";

/** The state of a question: no answer yet, the answer, or no answer to be had. */
export type Asked = FitAnswer | "working" | "failed";

/**
 * Asks a worker what fits. Each request is asked once, and a new one ends the one before. The screen stays usable
 * however long the search takes.
 */
export function useFit(request: FitRequest): Asked {
  const [asked, setAsked] = useState<{ readonly request: FitRequest; readonly answer: Asked } | null>(null);
  useEffect(() => {
    const worker = new Worker(new URL("./fit-worker.ts", import.meta.url), { type: "module" });
    const settle = (answer: Asked) => setAsked({ request, answer });
    worker.addEventListener("message", ({ data }: MessageEvent<FitAnswer>) => settle(data));
    worker.addEventListener("error", () => settle("failed"));
    worker.postMessage(request);
    return () => worker.terminate();
  }, [request]);
  return asked?.request === request ? asked.answer : "working";
}
