import type { Said } from "./argument.ts";
import { inWords } from "./in-words.ts";

/** An error that a person reads: it carries what there is to say, and its message is that in the language in use when it is asked for. */
export class SaidError extends Error {
  readonly said: Said;

  constructor(said: Said, options?: ErrorOptions) {
    super(undefined, options);
    this.said = said;
    Object.defineProperty(this, "message", { get: () => inWords(said), configurable: true });
  }
}

/** What an error has to say; of anything else that was thrown, its text. */
export function saidBy(error: unknown): Said {
  if (error instanceof SaidError) return error.said;
  return error instanceof Error ? error.message : String(error);
}
