import type { Procedure } from "../../core/procedure/index.ts";
import { languageAtHand, languagesOf } from "../../core/procedure/index.ts";
import { StoredChoice } from "../session/index.ts";

/** What stands for the author's own texts among the choices; no language tag is empty. */
export const AS_WRITTEN = "";

/** The language in which the reader wants texts, by its tag; {@link AS_WRITTEN}, or `null` for that of the screens. */
export const textChoice = new StoredChoice<string | null>("tetherline.texts", null);

/**
 * The language in which texts of a procedure are shown ([WRD4]): the chosen one, else that of the screens. `null` where they are shown as
 * written: that was chosen, the author's language is the one that is wanted, or the procedure carries no other that answers to it.
 */
export function languageShown(
  procedure: Pick<Procedure, "language" | "words">,
  chosen: string | null,
  spoken: string,
): string | null {
  if (chosen === AS_WRITTEN) return null;
  const own = procedure.language;
  for (const wanted of chosen === null ? [spoken] : [chosen, spoken]) {
    if (own !== undefined && languageAtHand(wanted, [own]) !== null) return null;
    const found = languageAtHand(wanted, languagesOf(procedure));
    if (found !== null) return found;
  }
  return null;
}

/** What a language is called in itself; its tag where the device does not know it. */
export function languageName(tag: string): string {
  try {
    return new Intl.DisplayNames([tag], { type: "language" }).of(tag) ?? tag;
  } catch {
    return tag;
  }
}
