import { english, shellWords } from "../../words/english/shell/index.ts";
import { speak } from "../../words/index.ts";
import { languageChoice } from "./spoken-language.ts";

/**
 * Loads the language that was chosen on this device, as far as the first screen needs it: English where none was, or where the other one
 * is not to be had now. Call it once, before the first paint.
 */
export async function startLanguage(): Promise<void> {
  speak(english, shellWords);
  const tag = languageChoice.current();
  if (tag === null) return;
  try {
    const { spokenAtStart } = await import("./choose-language.ts");
    await spokenAtStart(tag);
  } catch {
    // English is there, and the field on the shelf says that it is in use.
  }
}
