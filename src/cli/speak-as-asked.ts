import type { Outline } from "../core/procedure/index.ts";
import { inLanguage, languageAtHand, languagesOf, outlineOf } from "../core/procedure/index.ts";
import type { Ledger } from "../core/walk/index.ts";
import type { Catalogue, LanguageTag } from "../words/index.ts";
import { languageOf, speak, words } from "../words/index.ts";
import { givenFor } from "./given-for.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The language that was asked for last; `null` where none was. */
let asked: string | null = null;

/** All words of each language but English, loaded when they are asked for. */
const WORDS: Readonly<Record<Exclude<LanguageTag, "en-GB">, () => Promise<Catalogue>>> = {
  fr: async () => (await import("../words/french/index.ts")).frenchWords,
  de: async () => (await import("../words/german/index.ts")).germanWords,
  ja: async () => (await import("../words/japanese/index.ts")).japaneseWords,
  "ar-u-nu-latn": async () => (await import("../words/arabic/index.ts")).arabicWords,
};

/** Speaks the language that `--lang` asks for, wherever it stands; English stays where it is missing. Throws {@link UnusableInputError} where there is none such. */
export async function speakAsAsked(args: readonly string[]): Promise<void> {
  asked = null;
  const tag = givenFor("--lang", args);
  if (tag === null) return;
  const language = languageOf(tag);
  if (!language) throw new UnusableInputError(words("cli/no-language", { tag }));
  asked = tag;
  if (language.tag !== "en-GB") speak(language, await WORDS[language.tag]());
}

/**
 * An outline with its texts in the language that `--lang` asked for, where its procedure carries them ([WRD4]); a text that is missing there or older than
 * its author's says so in brackets. The same outline where none was asked for.
 */
export function inLanguageAsked(outline: Outline): Outline {
  const { procedure } = outline;
  const own = procedure.language;
  if (asked === null || (own !== undefined && languageAtHand(asked, [own]) !== null)) return outline;
  const shown = inLanguage(procedure, languageAtHand(asked, languagesOf(procedure)), (text, standing) =>
    words("texts/marked", { text, mark: words(standing === "older" ? "texts/older" : "texts/missing") }),
  );
  return shown.procedure === procedure ? outline : outlineOf(shown.procedure);
}

/** A ledger with the procedure in force in the language that was asked for, as {@link inLanguageAsked}. */
export const ledgerAsked = (ledger: Ledger): Ledger => ({
  ...ledger,
  inForce: { ...ledger.inForce, outline: inLanguageAsked(ledger.inForce.outline) },
});
