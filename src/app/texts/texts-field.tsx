import { words } from "../../words/index.ts";
import { AS_WRITTEN, languageName } from "./text-choice.ts";
import { useShownTexts } from "./use-texts.ts";

/** What the author's texts are called among the languages: with their language, where it is said. */
const asWritten = (author: string | null): string =>
  author === null
    ? words("texts/as-written")
    : words("texts/as-written-in", { language: languageName(author) });

/** The choice of the language in which the texts of the procedure are shown; nothing where it carries one alone ([WRD4]). */
export function TextsField() {
  const texts = useShownTexts();
  if (!texts || texts.languages.length === 0) return null;
  const language = texts.language === null ? "" : languageName(texts.language);
  return (
    <div className="texts-field">
      <label className="field">
        <span>{words("texts/language")}</span>
        <select
          value={texts.wanted ?? AS_WRITTEN}
          onChange={({ target }) => texts.choose(target.value === AS_WRITTEN ? null : target.value)}
        >
          <option value={AS_WRITTEN} lang={texts.author ?? undefined}>
            {asWritten(texts.author)}
          </option>
          {texts.languages.map((tag) => (
            <option key={tag} value={tag} lang={tag}>
              {languageName(tag)}
            </option>
          ))}
        </select>
      </label>
      {texts.missing > 0 && (
        <p className="hint">{words("words/missing", { language, count: texts.missing })}</p>
      )}
      {texts.older > 0 && <p className="hint">{words("texts/older-count", { count: texts.older })}</p>}
    </div>
  );
}

/** The button that shows the author's texts, and the chosen language again; nothing while the author's are what is wanted. */
export function TextsTurn() {
  const texts = useShownTexts();
  if (!texts || texts.wanted === null) return null;
  return (
    <button type="button" className="plain-button" onClick={texts.turn}>
      {texts.language === null ? (
        <span lang={texts.wanted}>{languageName(texts.wanted)}</span>
      ) : (
        words("texts/as-written")
      )}
    </button>
  );
}
