import { english, shellWords } from "../../words/english/shell/index.ts";
import { addWords, speak } from "../../words/index.ts";

/** Loads the app's language as far as the first screen needs it. Call it once, before the first paint. */
export function startLanguage(): void {
  speak(english, shellWords);
}

let whole: Promise<void> | null = null;

/**
 * Resolves once all words are loaded, including those about procedures and walks. Rejects when they cannot be loaded.
 */
export function wholeLanguage(): Promise<void> {
  whole ??= load().catch((error: unknown) => {
    // A later call tries again.
    whole = null;
    throw error;
  });
  return whole;
}

async function load(): Promise<void> {
  const { screenWords } = await import("../../words/english/screens/index.ts");
  addWords(screenWords);
}
