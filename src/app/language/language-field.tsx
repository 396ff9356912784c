import { useState } from "react";
import type { LanguageTag } from "../../words/index.ts";
import { LANGUAGES, words } from "../../words/index.ts";
import { spokenTag } from "./spoken-language.ts";

/** A field for choosing the language of the app ([WRD3]). What a choice takes is loaded when one is made. */
export function LanguageField() {
  const [wanted, setWanted] = useState<LanguageTag | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const choose = (tag: LanguageTag) => {
    setWanted(tag);
    setFailed(null);
    import("./choose-language.ts")
      .then(({ chooseLanguage }) => chooseLanguage(tag))
      .catch(() => {
        setWanted(null);
        setFailed(LANGUAGES.find((one) => one.tag === tag)?.name ?? tag);
      });
  };
  return (
    <label className="field">
      <span>{words("parts/language")}</span>
      <select value={wanted ?? spokenTag()} onChange={(event) => choose(event.target.value as LanguageTag)}>
        {LANGUAGES.map(({ tag, name }) => (
          <option key={tag} value={tag} lang={tag}>
            {name}
          </option>
        ))}
      </select>
      {failed !== null && <span role="status">{words("parts/language-failed", { language: failed })}</span>}
    </label>
  );
}
