import type { AskSeal } from "./ask-seal-worker.ts";
import type { SealRequest } from "./seal-request.ts";

/**
 * Gives the log of the walk on screen as lines, each entry with its seal. What a session holds of its own entries is without:
 * they are sealed after they were entered, in the store.
 */
export type ReadLog = () => Promise<string>;

type Asked = Parameters<AskSeal>;

/** What is asked of a log, and who hears the answers. */
export interface OfLog {
  readonly readLog: ReadLog;
  readonly ask: AskSeal;
  /** The request, once the log is read. */
  readonly request: (log: string) => SealRequest;
  readonly onTold: Asked[1];
  /** Called when the log cannot be read, or whoever is asked fails. */
  readonly onFail: Asked[2];
}

/** Reads the log and asks about it; returns a function that ends both, after which nothing is told any more. */
export function askOfLog({ readLog, ask, request, onTold, onFail }: OfLog): () => void {
  let isOver = false;
  let end = () => {
    isOver = true;
  };
  readLog().then(
    (log) => {
      if (!isOver) end = ask(request(log), onTold, onFail);
    },
    () => {
      if (!isOver) onFail();
    },
  );
  return () => end();
}
