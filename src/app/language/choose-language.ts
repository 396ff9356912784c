import type { LanguageTag } from "../../words/index.ts";
import { LANGUAGES, languageOf } from "../../words/index.ts";
import { drawWithFaces } from "./draw-with-faces.ts";
import { LANGUAGE_PARTS } from "./other-languages.ts";
import { goOver, languageChoice } from "./spoken-language.ts";

/** Goes over to the language that was kept on the device, if it is one; the words of other screens come when they are needed. */
export async function spokenAtStart(tag: string): Promise<void> {
  if (tag === "en-XA") return speakPseudo();
  const language = languageOf(tag);
  if (!language) return;
  const { shell, screens } = LANGUAGE_PARTS[language.tag];
  goOver(language, await shell(), screens);
  void drawWithFaces(language.tag);
}

/** Goes over to the language by which tests see words that are not from the words' folder, or that do not fit. */
async function speakPseudo(): Promise<void> {
  const { PSEUDO_LANGUAGE, inPseudoLanguage } = await import("../../words/pseudo-language.ts");
  const { shell, screens } = LANGUAGE_PARTS["en-GB"];
  goOver(PSEUDO_LANGUAGE, inPseudoLanguage(await shell()), async () => inPseudoLanguage(await screens()));
}

/** The choice that was made last; one before it, whose words come later, does nothing any more. */
let latest: LanguageTag | null = null;

/** Goes over to a language at once, and keeps the choice ([WRD3]). Rejects, with nothing changed, where its words cannot be loaded. */
export async function chooseLanguage(tag: LanguageTag): Promise<void> {
  const language = LANGUAGES.find((one) => one.tag === tag);
  if (!language) return;
  latest = tag;
  const parts = LANGUAGE_PARTS[tag];
  const [shell, screens] = await Promise.all([parts.shell(), parts.screens()]);
  if (latest !== tag) return;
  languageChoice.choose(tag);
  goOver(language, { ...shell, ...screens }, null);
  void drawWithFaces(tag);
}
