import { english } from "../../words/english/shell/index.ts";
import type { Catalogue, Language } from "../../words/index.ts";
import { addWords, speak } from "../../words/index.ts";
import { StoredChoice } from "../session/index.ts";
import { retelling } from "./retelling.ts";

/** The tag of the language that was chosen on this device; `null` for none. */
export const languageChoice = new StoredChoice<string | null>("tetherline.language", null);

let spoken: Language = english;
let screens: () => Promise<Catalogue> = async () =>
  (await import("../../words/english/screens/index.ts")).screenWords;
let whole: Promise<void> | null = null;

/** Goes over to a language of which these words are at hand; `rest` loads those of the other screens, `null` where they are among them. */
export function goOver(
  language: Language,
  catalogue: Catalogue,
  rest: (() => Promise<Catalogue>) | null,
): void {
  speak(language, catalogue);
  spoken = language;
  screens = rest ?? (async () => ({}));
  whole = null;
  const { documentElement: page } = document;
  page.lang = language.tag.replace(/-u-.*$/, "");
  page.dir = language.direction;
  retelling.tell();
}

/** The tag of the language in use. */
export const spokenTag = (): string => spoken.tag;

/**
 * Resolves once all words of the language in use are loaded, including those about procedures and walks. Rejects when they cannot be
 * loaded.
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
  addWords(await screens());
}
