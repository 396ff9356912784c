import type { Model } from "messageformat";
import { parseMessage, stringifyMessage } from "messageformat";
import type { Language } from "./language.ts";
import type { Catalogue } from "./language-in-use.ts";

/** A language that nobody speaks, under the tag that CLDR keeps for it: by it one sees which words are not from here, and which do not fit. */
export const PSEUDO_LANGUAGE: Language = { tag: "en-XA", direction: "ltr" };

const VOWELS: Readonly<Record<string, string>> = { a: "áa", e: "ée", i: "íi", o: "óo", u: "úu", y: "ýy" };

/** English words with each vowel twice and an accent on it, which makes them longer by two fifths. */
const stretched = (text: string): string =>
  text
    .replaceAll(/[aeiouy]/g, (vowel) => VOWELS[vowel] ?? vowel)
    .replaceAll(/[AEIOU]/g, (vowel) => `${vowel}${vowel}`);

const inPattern = (pattern: Model.Pattern): Model.Pattern =>
  pattern.map((part) => (typeof part === "string" ? stretched(part) : part));

/** The messages of English in {@link PSEUDO_LANGUAGE}, with the same arguments, marks and variants. */
export function inPseudoLanguage(english: Catalogue): Catalogue {
  return Object.fromEntries(
    Object.entries(english).map(([key, text]) => {
      const model: Model.Message = parseMessage(text);
      const long =
        model.type === "select"
          ? { ...model, variants: model.variants.map((one) => ({ ...one, value: inPattern(one.value) })) }
          : { ...model, pattern: inPattern(model.pattern) };
      return [key, stringifyMessage(long)];
    }),
  );
}
