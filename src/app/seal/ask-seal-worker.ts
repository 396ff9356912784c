import type { LogPiece, SealQuestion, SealRequest, SealTold } from "./seal-request.ts";

/**
 * Gives the log of the walk on screen in pieces, each entry with its seal. What a session holds of its own entries is without:
 * they are sealed after they were entered, in the store.
 */
export type ReadLog = () => AsyncIterable<LogPiece>;

/** Who hears what comes of a question. */
export interface SealAsker {
  readonly onTold: (told: SealTold) => void;
  /** Called when the log cannot be read, or whoever is asked fails. */
  readonly onFail: () => void;
}

/** Reads a log and asks about it. Returns what ends both, after which nothing is told any more. */
export type AskSeal = (question: SealQuestion, readLog: ReadLog, asker: SealAsker) => () => void;

/** Asks the worker that the app has for logs as records, one of its own, which begins while the log is still read. */
export const askSealWorker: AskSeal = (question, readLog, { onTold, onFail }) => {
  const worker = new Worker(new URL("./seal-worker.ts", import.meta.url), { type: "module" });
  let isOver = false;
  const end = () => {
    isOver = true;
    worker.terminate();
  };
  const fail = () => {
    if (isOver) return;
    end();
    onFail();
  };
  worker.addEventListener("message", ({ data }: MessageEvent<SealTold>) => {
    if (isOver) return;
    if (data.kind !== "progress") end();
    onTold(data);
  });
  worker.addEventListener("error", fail);
  const send = (request: SealRequest) => worker.postMessage(request);
  const sendAll = async () => {
    send({ question });
    for await (const piece of readLog()) {
      if (isOver) return;
      send({ piece });
    }
    send({ isAll: true });
  };
  sendAll().catch(fail);
  return end;
};
