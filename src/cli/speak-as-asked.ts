import type { Outline } from "../core/procedure/index.ts";
import { inLanguage, languageAtHand, languagesOf, outlineOf } from "../core/procedure/index.ts";
import type { Ledger } from "../core/walk/index.ts";
import type { Catalogue, LanguageTag } from "../words/index.ts";
import { languageOf, speak, words } from "../words/index.ts";
import { givenFor } from "./given-for.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The language that was asked for last, and the one for texts of procedures; `null` where none was. */
let asked: { readonly spoken: string | null; readonly texts: string | null } = { spoken: null, texts: null };

/** What stands for the author's own texts with `--texts`: no language has a tag of this form. */
const AUTHOR = "author";

/** All words of each language but English, loaded when they are asked for. */
const WORDS: Readonly<Record<Exclude<LanguageTag, "en-GB">, () => Promise<Catalogue>>> = {
  fr: async () => (await import("../words/french/index.ts")).frenchWords,
  de: async () => (await import("../words/german/index.ts")).germanWords,
  ja: async () => (await import("../words/japanese/index.ts")).japaneseWords,
  "ar-u-nu-latn": async () => (await import("../words/arabic/index.ts")).arabicWords,
};

/** Speaks the language that `--lang` asks for, wherever it stands; English stays where it is missing. Throws {@link UnusableInputError} where there is none such. */
export async function speakAsAsked(args: readonly string[]): Promise<void> {
  asked = { spoken: null, texts: givenFor("--texts", args) };
  const tag = givenFor("--lang", args);
  if (tag === null) return;
  const language = languageOf(tag);
  if (!language) throw new UnusableInputError(words("cli/no-language", { tag }));
  asked = { ...asked, spoken: tag };
  if (language.tag !== "en-GB") speak(language, await WORDS[language.tag]());
}

/**
 * An outline with its texts in the language that `--texts` asked for, or else that of `--lang` where its procedure carries them ([WRD4]); a text that is
 * missing there or older than its author's says so in brackets. The same outline where none was asked for. Throws {@link UnusableInputError} for texts
 * that were asked for and that it does not carry.
 */
export function inLanguageAsked(outline: Outline): Outline {
  const { procedure } = outline;
  const own = procedure.language;
  const tag = asked.texts ?? asked.spoken;
  if (tag === null || tag === AUTHOR) return outline;
  if (own !== undefined && languageAtHand(tag, [own]) !== null) return outline;
  const languages = languagesOf(procedure);
  const found = languageAtHand(tag, languages);
  if (found === null && asked.texts !== null)
    throw new UnusableInputError(
      languages.length > 0
        ? words("cli/no-texts", { tag, languages: own === undefined ? languages : [own, ...languages] })
        : words("cli/no-texts-but-author", { tag }),
    );
  const shown = inLanguage(procedure, found, (text, standing) =>
    words("texts/marked", { text, mark: words(standing === "older" ? "texts/older" : "texts/missing") }),
  );
  return shown.procedure === procedure ? outline : outlineOf(shown.procedure);
}

/** A ledger with the procedure in force in the language that was asked for, as {@link inLanguageAsked}. */
export const ledgerAsked = (ledger: Ledger): Ledger => ({
  ...ledger,
  inForce: { ...ledger.inForce, outline: inLanguageAsked(ledger.inForce.outline) },
});
