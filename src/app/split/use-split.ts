import { useCallback, useEffect, useRef, useState } from "react";
import type { SplitFound, SplitRequest } from "./split-request.ts";

/** The state of a question: nothing found yet, what was found so far, or no answer to be had. */
export type Looked = SplitFound | "working" | "failed";

/**
 * Asks a worker for the best split, which tells again and again what it has. A new request ends the one before. `stop`
 * ends the search; what was found by then stays.
 */
export function useSplit(request: SplitRequest): { readonly looked: Looked; readonly stop: () => void } {
  const [asked, setAsked] = useState<{ readonly request: SplitRequest; readonly looked: Looked } | null>(
    null,
  );
  const working = useRef<Worker | null>(null);
  useEffect(() => {
    const worker = new Worker(new URL("./split-worker.ts", import.meta.url), { type: "module" });
    working.current = worker;
    const settle = (looked: Looked) => setAsked({ request, looked });
    worker.addEventListener("message", ({ data }: MessageEvent<SplitFound>) => settle(data));
    worker.addEventListener("error", () => settle("failed"));
    worker.postMessage(request);
    return () => worker.terminate();
  }, [request]);
  const stop = useCallback(() => {
    working.current?.terminate();
    setAsked((known) =>
      known && typeof known.looked === "object"
        ? { ...known, looked: { ...known.looked, isLast: true } }
        : known,
    );
  }, []);
  return { looked: asked?.request === request ? asked.looked : "working", stop };
}
