import { createContext, useContext, useMemo, useState, useSyncExternalStore } from "react";
import type { InLanguage, Marking, Outline } from "../../core/procedure/index.ts";
import { inLanguage, languagesOf, outlineOf } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { spokenTag } from "../language/index.ts";
import { AS_WRITTEN, languageShown, textChoice } from "./text-choice.ts";

/** The texts of a procedure as a screen shows them ([WRD4]). */
export interface Texts {
  /** The outline with its texts in the language that is shown. */
  readonly outline: Outline;
  /** The language that is shown; `null` for the author's texts. */
  readonly language: string | null;
  /** The language that is wanted, also while the author's texts are looked at; `null` where the author's are wanted. */
  readonly wanted: string | null;
  /** The languages that the procedure, or the one beside it, carries beside the author's. */
  readonly languages: readonly string[];
  /** The author's language; `null` where it is not said. */
  readonly author: string | null;
  readonly standing: InLanguage["standing"];
  /**
   * Another state of the procedure, such as one with changes that are tried, with its texts in the same language; `marking` instead of that of the screen.
   * What differs from the author's texts of `beside` is told as written.
   */
  readonly show: (outline: Outline, marking?: Marking | null, beside?: Outline | null) => Outline;
  /** How many texts are missing in the language shown, and how many are older than the author's. */
  readonly missing: number;
  readonly older: number;
  /** Goes over to another language, and keeps the choice; `null` for the author's texts. */
  readonly choose: (language: string | null) => void;
  /** Shows the author's texts, or those in the language that is wanted again. */
  readonly turn: () => void;
}

/** The texts of the screen; `null` where nothing was chosen among languages. */
export const TextsContext = createContext<Texts | null>(null);

/** The texts that the screen shows; `null` without a provider. */
export const useShownTexts = (): Texts | null => useContext(TextsContext);

/**
 * The texts of a procedure in the language that its reader wants, with what changes that; `null` without a procedure. `marking` is for what shows plain
 * texts alone, such as cards; it must be the same function each time. `beside` is another revision that is compared with it: one choice holds for
 * both, and what differs in their authors' texts is told as written.
 */
export function useTexts(
  outline: Outline | null,
  marking: Marking | null = null,
  beside: Outline | null = null,
): Texts | null {
  const chosen = useSyncExternalStore(textChoice.watch, textChoice.current);
  const [isTurned, setIsTurned] = useState(false);
  const spoken = spokenTag();
  const procedure = outline?.procedure ?? null;
  const other = beside?.procedure ?? null;
  const wanted =
    procedure &&
    (languageShown(procedure, chosen, spoken) ?? (other && languageShown(other, chosen, spoken)));
  const language = isTurned ? null : wanted;
  const shown = useMemo(
    () => procedure && inLanguage(procedure, language, marking, other),
    [procedure, language, marking, other],
  );
  const inWords = useMemo(
    () =>
      !outline || !shown || shown.procedure === outline.procedure ? outline : outlineOf(shown.procedure),
    [outline, shown],
  );
  return useMemo(
    () =>
      inWords &&
      shown && {
        outline: inWords,
        language,
        wanted,
        languages: [...new Set([...languagesOf(inWords.procedure), ...(other ? languagesOf(other) : [])])],
        author: inWords.procedure.language ?? null,
        standing: shown.standing,
        show: (shownToo, markingIn = marking, besideIt = null) =>
          shownToo === outline && markingIn === marking && besideIt === beside
            ? inWords
            : outlineIn(shownToo, language, markingIn, besideIt),
        missing: shown.missing,
        older: shown.older,
        choose: (next) => {
          setIsTurned(false);
          textChoice.choose(next ?? AS_WRITTEN);
        },
        turn: () => setIsTurned((was) => !was),
      },
    [inWords, shown, language, wanted, outline, marking, other, beside],
  );
}

function outlineIn(
  outline: Outline,
  language: string | null,
  marking: Marking | null,
  beside: Outline | null,
): Outline {
  const { procedure } = inLanguage(outline.procedure, language, marking, beside?.procedure ?? null);
  return procedure === outline.procedure ? outline : outlineOf(procedure);
}

/** Puts the mark of a text into it, in brackets. */
export const markedInText: Marking = (text, standing) =>
  words("texts/marked", { text, mark: words(standing === "older" ? "texts/older" : "texts/missing") });
