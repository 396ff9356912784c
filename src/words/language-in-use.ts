import type { MessageKey } from "./argument.ts";
import type { Language } from "./language.ts";

/** Messages in MessageFormat 2, by key: all there are, or the part that some screens need. */
export type Catalogue = Readonly<Partial<Record<MessageKey, string>>>;

/** A language with what has been loaded of its messages. */
export interface SpokenLanguage {
  readonly language: Language;
  readonly catalogue: Catalogue;
}

/** Words were asked for before a language was chosen: a mistake of ours. */
export class NoLanguageError extends Error {
  override readonly name = "NoLanguageError";
}

let inUse: SpokenLanguage | null = null;

/** Chooses the language of everything that is put in words from here on, with the messages that are at hand. */
export function speak(language: Language, catalogue: Catalogue): void {
  inUse = { language, catalogue };
}

/** Adds messages to the language in use, as a part of it is loaded. Throws {@link NoLanguageError} where there is none. */
export function addWords(more: Catalogue): void {
  const { language, catalogue } = languageInUse();
  inUse = { language, catalogue: { ...catalogue, ...more } };
}

/** The language that was chosen last. Throws {@link NoLanguageError} where none was. */
export function languageInUse(): SpokenLanguage {
  if (inUse === null) throw new NoLanguageError("words were asked for before a language was chosen");
  return inUse;
}
