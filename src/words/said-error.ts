import type { Said } from "./argument.ts";
import { inWords, UnspeakableError } from "./in-words.ts";
import { NoLanguageError } from "./language-in-use.ts";

/**
 * An error that a person reads: it carries what there is to say, and its message is that in the language in use when it is asked
 * for. Where it cannot be put in words, as in a process that has not chosen a language, its message is the key.
 */
export class SaidError extends Error {
  readonly said: Said;

  constructor(said: Said, options?: ErrorOptions) {
    super(undefined, options);
    this.said = said;
    Object.defineProperty(this, "message", { get: () => textOf(said), configurable: true });
  }
}

/** Asking an error for its message must not fail: the error itself would be lost. */
function textOf(said: Said): string {
  try {
    return inWords(said);
  } catch (cause) {
    if (typeof said !== "string" && (cause instanceof NoLanguageError || cause instanceof UnspeakableError))
      return said.key;
    throw cause;
  }
}

/** What an error has to say; of anything else that was thrown, its text. */
export function saidBy(error: unknown): Said {
  if (error instanceof SaidError) return error.said;
  return error instanceof Error ? error.message : String(error);
}
