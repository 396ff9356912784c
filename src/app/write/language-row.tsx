import type { KeyboardEvent } from "react";
import { useState } from "react";
import type { LanguageText } from "../../core/procedure/index.ts";
import { directionOf } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { fieldWords } from "./field-words.ts";

interface LanguageRowProps {
  readonly text: LanguageText;
  readonly language: string;
  /** The author's language; `null` where it is not said. */
  readonly author: string | null;
  readonly onText: (value: string | null) => void;
}

/** What a text is called: its member and its field, with the place of one in a list. */
const nameOf = ({ list, id, field, part }: LanguageText): string => {
  const place = typeof part === "number" ? part + 1 : (part ?? "");
  const name = `${fieldWords(field)} ${place}`.trim();
  return list === "head" ? name : `${id} · ${name}`;
};

/** A text of the author beside the one in another language. Enter takes what is typed and goes on to the next, Escape leaves it as it was. */
export function LanguageRow({ text, language, author, onText }: LanguageRowProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const { author: written, text: said, of, standing } = text;
  const take = () => {
    const value = typed?.trim() ?? null;
    setTyped(null);
    if (value !== null && value !== (said ?? "")) onText(value === "" ? null : value);
  };
  const press = (event: KeyboardEvent<HTMLTextAreaElement>) => {
    event.stopPropagation();
    if (event.nativeEvent.isComposing) return;
    if (event.key === "Escape") setTyped(null);
    if (event.key !== "Enter" || event.shiftKey) return;
    event.preventDefault();
    take();
    nextField(event.currentTarget)?.focus();
  };
  return (
    <li className="language-row" data-standing={standing}>
      <div className="language-author">
        <span className="hint">{nameOf(text)}</span>
        <span lang={author ?? undefined} dir={directionOf(author)}>
          {written}
        </span>
        {standing === "older" && of !== null && (
          <span className="hint">{words("languages/was", { text: of })}</span>
        )}
      </div>
      <div className="language-other">
        <textarea
          aria-label={nameOf(text)}
          lang={language}
          dir={directionOf(language)}
          rows={1 + Math.floor(written.length / 45)}
          maxLength={4000}
          value={typed ?? said ?? ""}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={take}
          onKeyDown={press}
        />
        {standing === "missing" && <b className="language-standing">{words("languages/missing")}</b>}
        {standing === "older" && (
          <>
            <b className="language-standing">{words("texts/older")}</b>
            <button type="button" className="plain-button" onClick={() => onText(said)}>
              {words("languages/holds")}
            </button>
          </>
        )}
      </div>
    </li>
  );
}

/** The field of the next row; `null` behind the last. */
const nextField = (field: HTMLElement): HTMLElement | null =>
  field.closest("li")?.nextElementSibling?.querySelector("textarea") ?? null;
