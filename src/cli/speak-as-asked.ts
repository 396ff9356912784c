import type { Catalogue, LanguageTag } from "../words/index.ts";
import { languageOf, speak, words } from "../words/index.ts";
import { givenFor } from "./given-for.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** All words of each language but English, loaded when they are asked for. */
const WORDS: Readonly<Record<Exclude<LanguageTag, "en-GB">, () => Promise<Catalogue>>> = {
  fr: async () => (await import("../words/french/index.ts")).frenchWords,
  de: async () => (await import("../words/german/index.ts")).germanWords,
  ja: async () => (await import("../words/japanese/index.ts")).japaneseWords,
  "ar-u-nu-latn": async () => (await import("../words/arabic/index.ts")).arabicWords,
};

/** Speaks the language that `--lang` asks for, wherever it stands; English stays where it is missing. Throws {@link UnusableInputError} where there is none such. */
export async function speakAsAsked(args: readonly string[]): Promise<void> {
  const tag = givenFor("--lang", args);
  if (tag === null) return;
  const language = languageOf(tag);
  if (!language) throw new UnusableInputError(words("cli/no-language", { tag }));
  if (language.tag !== "en-GB") speak(language, await WORDS[language.tag]());
}
