/** A BCP 47 tag in its usual form, such as `fr` or `pt-BR`; `null` for a text that is no language tag. */
export function canonicalTag(tag: string): string | null {
  try {
    return Intl.getCanonicalLocales(tag)[0] ?? null;
  } catch {
    return null;
  }
}

/** The language of a tag without region, script and all the rest: `pt` of `pt-BR`. */
const languagePart = (tag: string): string => tag.toLowerCase().split("-")[0] ?? tag;

/** Of the languages at hand the one that answers to a tag best: itself, else the first of the same language; `null` for none. */
export function languageAtHand(tag: string, atHand: readonly string[]): string | null {
  return (
    atHand.find((one) => one === canonicalTag(tag)) ??
    atHand.find((one) => languagePart(one) === languagePart(tag)) ??
    null
  );
}

/** Whether texts in the author's language may be looked at as English: it is English, or the author has not said. */
export const mayBeEnglish = (language: string | undefined): boolean =>
  language === undefined || languagePart(language) === "en";

/** The way in which a language is written, for the attribute `dir`; `auto` where the author has not said which language it is. */
export function directionOf(tag: string | null): "ltr" | "rtl" | "auto" {
  if (tag === null) return "auto";
  const script = new Intl.Locale(tag).maximize().script ?? "";
  return RIGHT_TO_LEFT.has(script) ? "rtl" : "ltr";
}

/** The scripts in use that run from right to left (Unicode, Script_Extensions of the Bidi classes R and AL). */
const RIGHT_TO_LEFT: ReadonlySet<string> = new Set([
  "Arab",
  "Hebr",
  "Thaa",
  "Syrc",
  "Nkoo",
  "Adlm",
  "Rohg",
  "Mand",
  "Samr",
]);
