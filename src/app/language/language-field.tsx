import { LANGUAGES, words } from "../../words/index.ts";
import { ChoiceField } from "./choice-field.tsx";
import { spokenTag } from "./spoken-language.ts";

const CHOICES = LANGUAGES.map(({ tag, name }) => ({ id: tag, name, lang: tag }));

/** A field for choosing the language of the app ([WRD3]). What a choice takes is loaded when one is made. */
export function LanguageField() {
  return (
    <ChoiceField
      name="language"
      label={words("parts/language")}
      choices={CHOICES}
      value={spokenTag()}
      onChoose={async (tag) => (await import("./choose-language.ts")).chooseLanguage(tag)}
    />
  );
}
