import { english } from "./english/shell/index.ts";
import type { Language } from "./language.ts";

/** A language as it is offered: under the name that it has in itself. */
export interface OfferedLanguage extends Language {
  readonly name: string;
}

/** The languages there are, the source first ([WRD2]). Figures are in the digits of the log in every one of them. */
export const LANGUAGES = [
  { ...english, name: "English" },
  { tag: "fr", direction: "ltr", name: "Français" },
  { tag: "de", direction: "ltr", name: "Deutsch" },
  { tag: "ja", direction: "ltr", name: "日本語" },
  { tag: "ar-u-nu-latn", direction: "rtl", name: "العربية" },
] as const satisfies readonly OfferedLanguage[];

/** The tag of one of {@link LANGUAGES}. */
export type LanguageTag = (typeof LANGUAGES)[number]["tag"];

/** The language whose tag, or the beginning of it, somebody gave; `null` for none of them. `en` is English, `ar` Arabic. */
export function languageOf(tag: string): (typeof LANGUAGES)[number] | null {
  const [primary] = tag.toLowerCase().split("-");
  return LANGUAGES.find((one) => one.tag.split("-")[0] === primary) ?? null;
}
