import type { ReactNode } from "react";
import type { TextField, TextList, TextPart, TextStanding } from "../../core/procedure/index.ts";
import { directionOf } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import type { Texts } from "./use-texts.ts";
import { useShownTexts } from "./use-texts.ts";
import "./texts.css";

/** Which text of the procedure is meant. */
interface TextNamed {
  readonly list: TextList;
  readonly id: string;
  readonly field: TextField;
  /** Which of a field's texts it is; all of them where it is left out. */
  readonly part?: TextPart;
}

interface TextInLanguageProps extends TextNamed {
  /** False where the same text stands beside it with its mark. */
  readonly isMarked?: boolean;
  readonly children: ReactNode;
}

/**
 * A text of the procedure, told in its own language and direction. One that has no text in the language shown, or an older one than its author's, says so
 * in words ([WRD4]).
 */
export function TextInLanguage({ isMarked = true, children, ...text }: TextInLanguageProps) {
  const texts = useShownTexts();
  if (!texts || texts.languages.length === 0) return children;
  const tongue = standingOf(texts, text) === "missing" ? texts.author : (texts.language ?? texts.author);
  return (
    <>
      <span lang={tongue ?? undefined} dir={directionOf(tongue)}>
        {children}
      </span>
      {isMarked && <TextMark {...text} />}
    </>
  );
}

/** Says of a text, in words, that it is missing in the language shown or older than its author's; nothing of any other. */
export function TextMark(text: TextNamed) {
  const texts = useShownTexts();
  const standing = texts ? standingOf(texts, text) : "there";
  if (standing === "there") return null;
  return <span className="text-mark">{words(standing === "older" ? "texts/older" : "texts/missing")}</span>;
}

const standingOf = ({ language, standing }: Texts, { list, id, field, part }: TextNamed): TextStanding =>
  language === null ? "there" : standing(list, id, field, part);
