import { useEffect, useState } from "react";
import { writeLines } from "../../core/log/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import { useServices } from "../session/index.ts";
import type { Renamed, WalksTold } from "./walks-request.ts";

/** What the walks on this device tell of a procedure: not known yet, known, or not to be had. */
export type Told = WalksTold | "working" | "failed";

const NONE: Renamed = {};

/**
 * Asks a worker what the walks of a procedure on this device tell. `file` is `null` while it is being read; `renamed` says
 * which steps have another id now, the same object until that changes.
 */
export function useWalksTold(file: ProcedureFile | null, renamed: Renamed = NONE): Told {
  const { store } = useServices();
  const [found, setFound] = useState<{
    readonly file: ProcedureFile;
    readonly renamed: Renamed;
    readonly told: Told;
  } | null>(null);
  useEffect(() => {
    if (!file) return;
    const worker = new Worker(new URL("./walks-worker.ts", import.meta.url), { type: "module" });
    let isOver = false;
    const settle = (told: Told) => {
      if (!isOver) setFound({ file, renamed, told });
    };
    const ask = async () => {
      const cards = await store.log.walks();
      const own = cards.filter(({ procedure }) => procedure === file.id);
      const logs = await Promise.all(
        own.map(async ({ walk }) => writeLines((await store.log.read(walk, 0)).entries)),
      );
      worker.postMessage({ file, logs, renamed });
    };
    worker.addEventListener("message", ({ data }: MessageEvent<WalksTold | null>) =>
      settle(data ?? "failed"),
    );
    worker.addEventListener("error", () => settle("failed"));
    ask().catch(() => settle("failed"));
    return () => {
      isOver = true;
      worker.terminate();
    };
  }, [store, file, renamed]);
  return found !== null && found.file === file && found.renamed === renamed ? found.told : "working";
}
