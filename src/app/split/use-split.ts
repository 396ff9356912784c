import { useCallback, useEffect, useRef, useState } from "react";
import type { SplitFound, SplitRequest } from "./split-request.ts";

/**
 * The state of a question: nothing asked, nothing found yet, what was found so far, no answer to be had, or no solver to
 * prove it with.
 */
export type Looked = SplitFound | "working" | "failed" | "no-solver" | null;

const startSearch = () => new Worker(new URL("./split-worker.ts", import.meta.url), { type: "module" });

const startProof = () => new Worker(new URL("./proof-worker.ts", import.meta.url), { type: "module" });

/**
 * Asks a worker for the best split, which tells again and again what it has. A new request ends the one before. `stop`
 * ends the search; what was found by then stays.
 */
export function useSplit(
  request: SplitRequest | null,
  start: () => Worker = startSearch,
): { readonly looked: Looked; readonly stop: () => void } {
  const [asked, setAsked] = useState<{ readonly request: SplitRequest; readonly looked: Looked } | null>(
    null,
  );
  const working = useRef<Worker | null>(null);
  useEffect(() => {
    if (!request) return;
    const worker = start();
    working.current = worker;
    const settle = (looked: Looked) => setAsked({ request, looked });
    worker.addEventListener("message", ({ data }: MessageEvent<SplitFound | "no-solver">) => settle(data));
    worker.addEventListener("error", () => settle("failed"));
    worker.postMessage(request);
    return () => worker.terminate();
  }, [request, start]);
  const stop = useCallback(() => {
    working.current?.terminate();
    setAsked((known) =>
      known && typeof known.looked === "object" && known.looked
        ? { ...known, looked: { ...known.looked, isLast: true } }
        : known,
    );
  }, []);
  if (!request) return { looked: null, stop };
  return { looked: asked?.request === request ? asked.looked : "working", stop };
}

/** Asks for a second proof of what was found, each time that `prove` is called; `stop` gives it up. */
export function useProof(request: SplitRequest): {
  readonly looked: Looked;
  readonly prove: () => void;
  readonly stop: () => void;
} {
  const [asked, setAsked] = useState<{ readonly of: SplitRequest; readonly request: SplitRequest } | null>(
    null,
  );
  const { looked } = useSplit(asked?.of === request ? asked.request : null, startProof);
  return {
    looked,
    prove: () => setAsked({ of: request, request: { ...request } }),
    stop: () => setAsked(null),
  };
}
