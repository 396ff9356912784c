import { english, shellWords } from "../../words/english/shell/index.ts";
import { addWords, speak } from "../../words/index.ts";

/** Speaks the language of the app, as far as the first screen needs it. Call once, before the first paint. */
export function startLanguage(): void {
  speak(english, shellWords);
}

let whole: Promise<void> | null = null;

/** Resolves once everything can be put in words, what is said of procedures and walks too. Rejects when it cannot be loaded. */
export function wholeLanguage(): Promise<void> {
  whole ??= load().catch((error: unknown) => {
    // Asked again, it is tried again.
    whole = null;
    throw error;
  });
  return whole;
}

async function load(): Promise<void> {
  const { screenWords } = await import("../../words/english/screens/index.ts");
  addWords(screenWords);
}
