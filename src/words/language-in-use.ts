import type { Language } from "./language.ts";

/** Words were asked for before a language was chosen: a mistake of ours. */
export class NoLanguageError extends Error {
  override readonly name = "NoLanguageError";
}

let inUse: Language | null = null;

/** Chooses the language of everything that is put in words from here on. */
export function speak(language: Language): void {
  inUse = language;
}

/** The language that was chosen last. Throws {@link NoLanguageError} where none was. */
export function languageInUse(): Language {
  if (inUse === null) throw new NoLanguageError("words were asked for before a language was chosen");
  return inUse;
}
